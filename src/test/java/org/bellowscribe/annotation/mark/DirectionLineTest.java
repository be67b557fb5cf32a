package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class DirectionLineTest {

    @Test
    void everyNoteHasTheSignOfItsDirectionAroundTheFiller() {
        Sketch sketch = new Sketch(1).push("1.3").pull("1.4").pull("1.3");
        assertEquals("· (·) (·)", Texts.line(new DirectionLine(), sketch.arrangement(), "direction-line"));
    }

    @Test
    void theLegendExplainsBothSigns() {
        assertEquals(
                List.of("·: pushed", "(·): pulled"),
                Texts.legend(new DirectionLine(), new Sketch(1).push("1.3").arrangement()));
    }
}
