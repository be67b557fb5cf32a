package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class PullLineTest {

    private static List<Mark> brackets(Sketch sketch) {
        return new PullLine().marks(sketch.arrangement());
    }

    @Test
    void pulledNotesInARowHaveOneBracket() {
        assertEquals(
                List.of(new Mark.Bracket(1, 2), new Mark.Bracket(4, 4)),
                brackets(new Sketch(1)
                        .push("1.3")
                        .pull("1.4")
                        .pull("1.3")
                        .push("1.3")
                        .pull("1.4")));
    }

    @Test
    void whatIsPushedHasNone() {
        assertEquals(List.of(), brackets(new Sketch(1).push("1.3").push("1.4")));
    }
}
