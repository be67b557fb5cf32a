package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.marking.KeyChoice;
import org.bellowscribe.marking.LeftHandChoice;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The laws of the added part and of the sheet for the left hand, on every sample. */
class WrittenLeftHandTest {

    private static final int AGAIN = 3;

    @TempDir
    private Path folder;

    private static Job mark(String instrument) throws DiagnosedException {
        return Jobs.mark(
                new MarkSettings(
                        InstrumentLibrary.find(instrument),
                        StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                        Annotators.defaultIds(),
                        Played.ALL,
                        new SolverOptions(
                                MannerLibrary.of(MannerLibrary.DEFAULT_ID),
                                Times.AGAIN,
                                true,
                                SolverOptions.USUAL_CELL_LIMIT),
                        KeyChoice.AS_WRITTEN,
                        ReadingOptions.DEFAULT),
                Outputs.SCORE.withLeftHand(new LeftHandChoice(true, true)));
    }

    private List<Result> run(Path input, String output, Job job) {
        List<String> beside = output.equals("stripped") ? List.of() : List.of(LeftHandChoice.SHEET);
        Sources sources = Sources.find(
                Wanted.all(List.of(input.toString()), new Wanted.Beside(beside, 0)), folder.resolve(output));
        List<Result> results = new ArrayList<>();
        Batch.run(sources.found(), job, 2, results::add);
        return results.stream().filter(Result::done).toList();
    }

    @Test
    void theAddedPartLeavesNoTraceAndFitsTheMelody() throws DiagnosedException, IOException {
        List<Result> marked = run(Path.of("samples"), "marked", mark(InstrumentLibrary.DEFAULT_ID));
        assertTrue(marked.size() > 20);
        for (int i = 0; i < marked.size(); i++) {
            Result result = marked.get(i);
            byte[] once = Files.readAllBytes(result.source().target());
            run(result.source().target(), "stripped", Jobs.strip());
            Path name = result.source().target().getFileName();
            assertArrayEquals(
                    Files.readAllBytes(result.source().file()),
                    Files.readAllBytes(folder.resolve("stripped").resolve(name)));
            // That marking again changes nothing else is asked of all samples in MarkingLawsTest.
            if (i % AGAIN == 0) {
                run(result.source().target(), "again", mark(InstrumentLibrary.DEFAULT_ID));
                assertArrayEquals(
                        once, Files.readAllBytes(folder.resolve("again").resolve(name)), name.toString());
            }
            ScoreDocument score = ScoreDocument.decode(once);
            assertEquals(List.of(), SchemaCheck.check(score.text()), name::toString);
            String sheet = Files.readString(result.source().beside(LeftHandChoice.SHEET));
            assertEquals(List.of(), SchemaCheck.check(sheet), name::toString);
            Tune melody = ScoreReader.read(score.withoutMarks().text(), "", ReadingOptions.DEFAULT);
            Tune alone = ScoreReader.read(sheet, "", ReadingOptions.DEFAULT);
            assertEquals(melody.playOrder(), alone.playOrder(), name::toString);
            assertEquals(lengths(melody), lengths(alone), name::toString);
            assertEquals(numbers(melody), numbers(alone), name::toString);
        }
    }

    private static List<Fraction> lengths(Tune tune) {
        return tune.measures().stream().map(Measure::length).toList();
    }

    private static List<String> numbers(Tune tune) {
        return tune.measures().stream().map(Measure::number).toList();
    }

    @Test
    void aBoxWithoutBassesGetsNoPartAndIsToldSo() throws DiagnosedException, IOException {
        Path file = Path.of("samples", "book", "two-ducks.musicxml");
        String silent = InstrumentLibrary.all().stream()
                .map(entry -> entry.instrument())
                .filter(instrument -> instrument.leftHand().isEmpty())
                .map(instrument -> instrument.id())
                .findFirst()
                .orElseThrow();
        List<Result> results = run(file, "silent", mark(silent));
        assertEquals(1, results.size());
        assertEquals(
                1,
                results.get(0).diagnostics().stream()
                        .filter(remark -> remark.code() == DiagnosticCode.LEFT_HAND)
                        .count());
        try (Stream<Path> files = Files.list(folder.resolve("silent"))) {
            assertEquals(1, files.count());
        }
    }
}
