package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.theory.NoteName;
import org.junit.jupiter.api.Test;

class PartAccidentalsTest {

    @Test
    void whatTheKeySaysNeedsNoSign() {
        assertEquals("", new PartAccidentals(2).sign(new NoteName('C', 1, 4)));
        assertEquals("natural", new PartAccidentals(2).sign(new NoteName('C', 0, 4)));
        assertEquals("", new PartAccidentals(-2).sign(new NoteName('E', -1, 3)));
        assertEquals("natural", new PartAccidentals(-2).sign(new NoteName('E', 0, 3)));
    }

    @Test
    void aSignHoldsForItsOctaveUntilTheNext() {
        PartAccidentals measure = new PartAccidentals(0);
        assertEquals("sharp", measure.sign(new NoteName('D', 1, 4)));
        assertEquals("", measure.sign(new NoteName('D', 1, 4)));
        assertEquals("", measure.sign(new NoteName('D', 0, 3)));
        assertEquals("natural", measure.sign(new NoteName('D', 0, 4)));
    }
}
