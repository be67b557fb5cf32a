package org.bellowscribe.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SpellingTest {

    private static String name(String note, int fifths) {
        Spelling spelling = Spelling.of(PitchClass.parse(note), fifths);
        return spelling.from(60).toString();
    }

    @Test
    void aKeyWithSharpsHasSharps() {
        assertEquals("F#4", name("Gb", 1));
        assertEquals("G#4", name("Ab", 2));
    }

    @Test
    void aKeyWithFlatsHasFlats() {
        assertEquals("Bb4", name("A#", -1));
        assertEquals("Db4", name("C#", -4));
    }

    @Test
    void everyPitchClassKeepsItsSoundInEveryKey() {
        for (int fifths = -7; fifths <= 7; fifths++) {
            for (int semitone = 0; semitone < 12; semitone++) {
                NoteName note = Spelling.of(new PitchClass(semitone), fifths).from(50);
                assertEquals(semitone, note.midiNumber() % 12);
                assertEquals(true, note.midiNumber() >= 50 && note.midiNumber() < 62, note::toString);
            }
        }
    }

    @Test
    void chordsAreSpelledInThirds() {
        Spelling b = Spelling.of(PitchClass.parse("B"), 2);
        assertEquals("D#5", b.third(false).from(71).toString());
        assertEquals("D5", b.third(true).from(71).toString());
        assertEquals("F#5", b.fifth().from(71).toString());
    }
}
