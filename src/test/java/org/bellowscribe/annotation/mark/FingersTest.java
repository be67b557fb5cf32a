package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class FingersTest {

    @Test
    void everyNoteOfAGroupShowsItsFinger() {
        Arrangement arrangement = new Sketch(1)
                .push("1.3")
                .fingers(1)
                .rest(PUSH)
                .pull("1.4", "1.6")
                .fingers(2, 4)
                .arrangement();
        assertEquals(
                List.of(new Mark.Finger(0, 0, 1), new Mark.Finger(2, 0, 2), new Mark.Finger(2, 1, 4)),
                new Fingers().marks(arrangement));
    }

    @Test
    void theLegendNamesTheFingers() {
        assertEquals(
                List.of("1 2 3 4: index, middle, ring and little finger"),
                Texts.legend(new Fingers(), new Sketch(1).push("1.3").arrangement()));
    }
}
