package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Key;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A transposed score, read again, is the tune transposed. */
class TransposedScoresTest {

    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("samples"))) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    static List<Path> corpus() {
        return Shared.sample("corpus/tunes");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyStepOfASampleReadsAsTheTuneTransposed(Path file) throws IOException, DiagnosedException {
        ScoreDocument score = ScoreDocument.decode(Files.readAllBytes(file));
        Tune tune = read(score);
        for (int semitones = -12; semitones <= 12; semitones++) {
            assertSameMusic(Transposition.of(tune, semitones), read(score.transposed(semitones)));
        }
    }

    @Tag("shared")
    @ParameterizedTest
    @MethodSource("corpus")
    void publishedTuneReadsAsTheTuneTransposed(Path file) throws IOException, DiagnosedException {
        ScoreDocument score = ScoreDocument.decode(Files.readAllBytes(file));
        Tune tune = read(score);
        for (int semitones : new int[] {-5, -1, 2, 6}) {
            assertSameMusic(Transposition.of(tune, semitones), read(score.transposed(semitones)));
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void transposedSampleHasTheSameElementsInTheSameOrder(Path file) throws IOException, DiagnosedException {
        ScoreDocument score = ScoreDocument.decode(Files.readAllBytes(file));
        assertEquals(skeleton(score.text()), skeleton(score.transposed(3).text()));
    }

    private static String skeleton(String text) {
        return text.replaceAll("\\s*<(alter|root-alter|bass-alter)>[^<]*</\\1>", "")
                .replaceAll("<(step|root-step|bass-step|octave|fifths|accidental)>[^<]*<", "<$1><");
    }

    private static Tune read(ScoreDocument score) throws DiagnosedException {
        return ScoreReader.read(score.text(), "title", ReadingOptions.DEFAULT);
    }

    private static void assertSameMusic(Tune expected, Tune read) {
        assertEquals(expected.events(), read.events());
        assertEquals(expected.harmonies(), read.harmonies());
        assertEquals(
                expected.measures().stream().map(measure -> measure.key()).toList(),
                read.measures().stream().map(measure -> measure.key()).toList());
        assertTrue(read.measures().stream()
                .map(measure -> measure.key())
                .mapToInt(Key::fifths)
                .allMatch(fifths -> Math.abs(fifths) <= 7));
    }
}
