package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.theory.Mode;
import org.junit.jupiter.api.Test;

class KeyRangesTest {

    private static final Instrument C_BOX = SmallInstrument.withBasses(
            SmallInstrument.of("G3/B3 C4/D4 E4/F4 G4/A4 C5/B4 E5/D5 G5/F5 C6/A5"), "c/g C/G f/f F/F");

    @Test
    void rangeReachesAsFarAsTheScaleHasNoGap() {
        KeyRange c = KeyRanges.of(C_BOX, List.of(Mode.MAJOR)).get(0);
        assertEquals("C major", c.name());
        assertEquals("B3 to A5", c.lowest() + " to " + c.highest());
        assertEquals(1, c.octaves());
    }

    @Test
    void keyThatLacksADegreeIsNotPlayable() {
        assertEquals(
                List.of("C major"),
                KeyRanges.of(C_BOX, List.of(Mode.MAJOR)).stream()
                        .map(KeyRange::name)
                        .toList());
    }

    @Test
    void modesOfTheSameScaleArePlayable() {
        assertEquals(
                List.of("C major", "G mixolydian", "D dorian", "A minor"),
                KeyRanges.of(C_BOX, List.of(Mode.MAJOR, Mode.MIXOLYDIAN, Mode.DORIAN, Mode.MINOR)).stream()
                        .map(KeyRange::name)
                        .toList());
    }

    @Test
    void lydianHasAnAugmentedFourthDegree() {
        KeyRange lydian = KeyRanges.of(C_BOX, List.of(Mode.LYDIAN)).get(0);
        assertEquals("F lydian", lydian.name());
        assertEquals("B", lydian.subdominant().root().toString());
    }

    @Test
    void tableHasOneLineForEachKey() {
        assertEquals("""
                key      from  to  octaves  tonic           subdominant               dominant
                C major  B3    A5  1        C push, c push  F push pull, f push pull  G pull, g pull
                """, KeyRangeTable.text(KeyRanges.of(C_BOX, List.of(Mode.MAJOR))));
    }
}
