package org.bellowscribe.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextLinesTest {

    @Test
    void noLineIsLongerThanItsWidth() {
        assertEquals(List.of("one two", "three", "four"), TextLines.wrap("one two three four", 8));
    }

    @Test
    void aLongWordHasALineOfItsOwn() {
        assertEquals(List.of("a", "accordionist", "b"), TextLines.wrap("a accordionist b", 5));
    }

    @Test
    void whiteSpaceIsOneSpace() {
        assertEquals(List.of("a b"), TextLines.wrap("  a \n b ", 5));
    }

    @Test
    void nothingIsNoLine() {
        assertEquals(List.of(), TextLines.wrap(" ", 5));
    }
}
