package org.bellowscribe.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

/** The box has bellows of 10 RU.s, of which 1 to 9 may be used. */
class WithoutAirTest {

    private static final Tune TUNE = TuneText.of("C4 C4 D4 C4", 60);

    private static final Played PLAYED = new Played(TUNE, 5000)
            .push(1000, 1)
            .push(1000, 1)
            .pull(3000, 1)
            .air(AirUse.LIGHT, 2000)
            .push(1000, 1);

    private static WithoutAir follow(int from, double opening, int... leftAlone) {
        List<Integer> steps = Arrays.stream(leftAlone).boxed().toList();
        List<Sounding> performance = Performance.of(TUNE, Played.BOX, PLAYED.solution());
        return new AirLeftOut(performance, Played.BOX.bellows(), steps::contains).follow(from, opening);
    }

    @Test
    void withEveryPressTheBellowsGoAsMarked() {
        assertEquals(new WithoutAir(0, List.of(4.0, 3.0, 6.0, 5.0), WithoutAir.End.LASTS), follow(0, 5));
    }

    @Test
    void withoutAPressItsAirIsMissingFromThereOn() {
        assertEquals(new WithoutAir(2, List.of(4.0, 3.0), WithoutAir.End.LASTS), follow(2, 3, 2));
    }

    @Test
    void itEndsWhereTheBellowsAreTooNearlyClosed() {
        WithoutAir closed = follow(0, 2.5, 2);
        assertEquals(new WithoutAir(0, List.of(1.5, 0.5), WithoutAir.End.CLOSED), closed);
        assertEquals(1, closed.last());
    }

    @Test
    void itEndsWhereTheBellowsAreTooWideOpen() {
        assertEquals(new WithoutAir(2, List.of(9.5), WithoutAir.End.WIDE_OPEN), follow(2, 8.5, 2));
    }

    @Test
    void theLastOfTheStrokeMayStillBeUsed() {
        assertEquals(WithoutAir.End.LASTS, follow(3, 2, 2).end());
    }
}
