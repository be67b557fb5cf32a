package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenChordTest {

    private static WrittenChord chord(String pitches) {
        return WrittenChord.of(Stream.of(pitches.split(" ")).map(Pitch::parse).toList());
    }

    @ParameterizedTest
    @CsvSource({
        "G3 B3 D4, G, 3",
        "B3 D4 G4, G, 3",
        "D3 G3 B3, G, 3",
        "G3 B3 D4 G4, G, 3",
        "E3 G3 B3, Em, 3",
        "B3 E4 G4, Em, 3",
        "A3 E4, A, 2",
        "E3 A3, A, 2"
    })
    void plainChordIsRecognisedInAnyInversion(String pitches, String chord, int tones) {
        WrittenChord found = chord(pitches);
        assertEquals(chord, found.chord().toString());
        assertEquals(tones, found.chord().tones().size());
        assertEquals(true, found.isPlain());
    }

    @ParameterizedTest
    @CsvSource({"G3 B3 D4 F4, G", "D3 F3 A3 C4, Dm", "C4 D4, C", "F3 G3 B3 D4, F"})
    void anyOtherChordIsBuiltOnItsLowestNote(String pitches, String chord) {
        WrittenChord found = chord(pitches);
        assertEquals(chord, found.chord().toString());
        assertEquals(false, found.isPlain());
    }
}
