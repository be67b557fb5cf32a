package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Test;

class NoteValueTest {

    @Test
    void aNoteHasTheLongestValueThatFits() {
        assertEquals(new NoteValue(Fraction.of(3, 4), "eighth", true), NoteValue.atMost(Fraction.of(3, 4)));
        assertEquals(new NoteValue(Fraction.of(1, 4), "16th", false), NoteValue.atMost(Fraction.of(1, 3)));
        assertNull(NoteValue.atMost(Fraction.of(1, 200)));
    }

    @Test
    void aRestBeginsOnAMultipleOfItself() {
        assertEquals(
                new NoteValue(Fraction.of(1, 2), "eighth", false),
                NoteValue.rest(Fraction.of(1, 2), Fraction.of(3, 2)));
        assertEquals(
                new NoteValue(Fraction.of(2, 1), "half", false), NoteValue.rest(Fraction.of(2, 1), Fraction.of(3, 1)));
        assertNull(NoteValue.rest(Fraction.of(1, 3), Fraction.of(1, 1)));
    }
}
