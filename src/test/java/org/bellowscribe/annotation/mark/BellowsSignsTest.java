package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class BellowsSignsTest {

    private static List<Mark> signs(Sketch sketch) {
        return new BellowsSigns().marks(sketch.arrangement());
    }

    @Test
    void theFirstNoteAndEveryTurnHaveASign() {
        assertEquals(
                List.of(new Mark.Sign(0, "accdnPush"), new Mark.Sign(2, "accdnPull")),
                signs(new Sketch(1).push("1.3").push("1.4").pull("1.4").pull("1.3")));
    }

    @Test
    void aRestHasNone() {
        assertEquals(
                List.of(new Mark.Sign(0, "accdnPush")),
                signs(new Sketch(1).push("1.3").rest(PULL).bass("G").push("1.4"))
                        .subList(0, 1));
    }
}
