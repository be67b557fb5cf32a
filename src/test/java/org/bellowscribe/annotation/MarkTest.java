package org.bellowscribe.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class MarkTest {

    @Test
    void aTextMustNotBeEmpty() {
        assertThrows(IllegalArgumentException.class, () -> new Mark.Syllable(0, "line", " "));
        assertThrows(IllegalArgumentException.class, () -> new Mark.Words(0, Topic.OTHER, ""));
    }

    @Test
    void aHandHasFiveFingers() {
        assertThrows(IllegalArgumentException.class, () -> new Mark.Finger(0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Mark.Finger(0, 0, 6));
        assertEquals(5, new Mark.Finger(0, 0, 5).finger());
    }
}
