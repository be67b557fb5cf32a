package org.bellowscribe.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.junit.jupiter.api.Test;

/** How far the end may miss the start when a tune is played again and again. */
class PlayAgainTest {

    private static void assertFound(Played played, String... violations) {
        assertEquals(List.of(violations), played.violations());
    }

    @Test
    void pickUpOutsideRepeatsExcusesItsOwnAir() {
        Tune tune = TuneText.of("C4 | C4 D4 C4 D4", 60, List.of(0, 1, 1));
        assertFound(new Played(tune, 5000)
                .push(1000, 1)
                .push(1000, 1)
                .pull(1000, 1)
                .push(1000, 1)
                .pull(1000, 1));
    }

    @Test
    void endingOutsideRepeatsExcusesNothing() {
        assertFound(
                new Played(TuneText.of("C4*2 D4*2 | C4*4", 60, List.of(0, 0, 1)), 9000)
                        .push(2000, 1)
                        .pull(2000, 1)
                        .push(4000, 1),
                "[play-again] The bellows end at 5000 and began at 9000 thousandths; they may differ by 0.");
    }

    @Test
    void pickUpWithoutRepeatsExcusesNothing() {
        Tune tune = TuneText.of("C4 | C4 D4 C4 D4", 60);
        assertFound(
                new Played(tune, 5000)
                        .push(1000, 1)
                        .push(1000, 1)
                        .pull(1000, 1)
                        .push(1000, 1)
                        .pull(1000, 1),
                "[play-again] The bellows end at 4000 and began at 5000 thousandths; they may differ by 0.");
    }
}
