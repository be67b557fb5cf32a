package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

/** Sheets with the numbers of further boxes are among the golden pairs. */
class AlsoButtonsTest {

    @Test
    void withoutFurtherBoxesThereIsNothing() {
        assertEquals(
                List.of(), new AlsoButtons().marks(new Sketch(1).push("1.3").arrangement()));
    }
}
