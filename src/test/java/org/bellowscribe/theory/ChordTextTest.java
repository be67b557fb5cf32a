package org.bellowscribe.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChordTextTest {

    @ParameterizedTest
    @CsvSource({
        "G, G, '[D, G, B]'",
        "Bm, B, '[D, F#, B]'",
        "(F#m), F#, '[C#, F#, A]'",
        "G7, G, '[D, F, G, B]'",
        "Bb, Bb, '[D, F, Bb]'",
        "Gmi., G, '[D, G, Bb]'",
        "G MINOR, G, '[D, G, Bb]'",
        "Cmaj7, C, '[C, E, G, B]'",
        "Asus4, A, '[D, E, A]'",
        "Ddim, D, '[D, F, G#]'",
        "E5, E, '[E, B]'"
    })
    void symbolsAreRead(String words, String root, String tones) {
        ChordSymbol chord = ChordText.parse(words);
        assertNotNull(chord);
        assertEquals(root, chord.root().toString());
        assertEquals(tones, chord.tones().toString());
    }

    @Test
    void bassAfterASlashIsTheLowestNote() {
        ChordSymbol chord = ChordText.parse("(D/F#)");
        assertNotNull(chord);
        assertEquals("F#", chord.bass().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "H", "Fine", "Dance", "Chorus", "D.C.", "Adagio", "( To B)", "4", "C/", "N.C."})
    void otherWordsAreNoChords(String words) {
        assertNull(ChordText.parse(words));
    }

    @Test
    void bareLetterMayNameASection() {
        assertFalse(ChordText.isUnmistakable("A"));
        assertTrue(ChordText.isUnmistakable("(A)"));
        assertTrue(ChordText.isUnmistakable("Am"));
    }
}
