package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.bellowscribe.Shared;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.marking.KeyChoice;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The laws of the whole chain, on every sample and every tune beside the project: marks are replayed before they are
 * written, come out again without a trace, and are the same the second time and with any number of threads.
 */
class MarkingLawsTest {

    // Reasons of the music or the box; anything else would be a fault of ours.
    private static final Set<DiagnosticCode> FAIR_REASONS =
            Set.of(DiagnosticCode.NO_BUTTON, DiagnosticCode.NO_REACH, DiagnosticCode.NO_AIR);

    // The laws hold however much the search may do.
    private static final long LITTLE_WORK = 20_000;

    @TempDir
    private Path folder;

    private static Job mark() throws DiagnosedException {
        return mark(Annotators.defaultIds(), false, SolverOptions.USUAL_CELL_LIMIT);
    }

    private static Job mark(List<String> marks, boolean tuneRecord, long cellLimit) throws DiagnosedException {
        MarkSettings settings = new MarkSettings(
                InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID),
                StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                marks,
                Played.ALL,
                new SolverOptions(MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, cellLimit),
                KeyChoice.AS_WRITTEN,
                ReadingOptions.DEFAULT);
        return Jobs.mark(settings, Outputs.SCORE.withRecord(tuneRecord));
    }

    private static List<Result> run(Path input, Path output, Job job, int threads) {
        Sources sources = Sources.find(List.of(input.toString()), output, false);
        List<Result> results = new ArrayList<>();
        Batch.run(sources.found(), job, threads, results::add);
        return results;
    }

    // Marks again every so many-th.
    private List<Result> checkLaws(Path input, Job mark, int step) throws DiagnosedException, IOException {
        Path marked = folder.resolve("marked");
        Path stripped = folder.resolve("stripped");
        List<Result> results = run(input, marked, mark, 2);
        run(marked, stripped, Jobs.strip(), 2);
        checkAgain(marked, results, mark, step);
        for (Result result : results) {
            Path relative = marked.relativize(result.source().target());
            if (result.done()) {
                byte[] original = Files.readAllBytes(result.source().file());
                byte[] once = Files.readAllBytes(result.source().target());
                assertFalse(Arrays.equals(original, once), relative + " has no marks");
                assertArrayEquals(original, Files.readAllBytes(stripped.resolve(relative)), relative.toString());
            } else {
                assertFalse(Files.exists(result.source().target()), relative.toString());
                Diagnostic error = result.firstError();
                assertNotNull(error);
                assertTrue(FAIR_REASONS.contains(error.code()), error.print(relative.toString()));
            }
        }
        return results;
    }

    private void checkAgain(Path marked, List<Result> results, Job mark, int step) throws IOException {
        List<Path> targets = results.stream()
                .filter(Result::done)
                .map(result -> result.source().target())
                .toList();
        Path given = folder.resolve("given");
        Path again = folder.resolve("again");
        for (int i = 0; i < targets.size(); i += step) {
            Path copy = given.resolve(marked.relativize(targets.get(i)));
            Files.createDirectories(copy.getParent());
            Files.copy(targets.get(i), copy);
        }
        List<Result> twice = run(given, again, mark, 1);
        assertEquals((targets.size() + step - 1) / step, twice.size());
        for (Result result : twice) {
            Path source = result.source().file();
            Path target = again.resolve(given.relativize(source));
            assertArrayEquals(Files.readAllBytes(source), Files.readAllBytes(target), source.toString());
        }
    }

    @Test
    void samplesKeepTheLaws() throws DiagnosedException, IOException {
        List<Result> results = checkLaws(Path.of("samples"), mark(), 1);
        List<Result> failed = results.stream().filter(result -> !result.done()).toList();
        assertEquals(1, failed.size());
        assertShortWords(results);
        assertTrue(results.stream()
                .allMatch(result ->
                        result.summary() == null || result.summary().cost().isNearlyProved()));
    }

    // A turn with air can meet a hand that moves or letters in a rest, and these can go nowhere else: one in fifty.
    private static void assertShortWords(List<Result> results) throws DiagnosedException, IOException {
        List<String> all = new ArrayList<>();
        for (Result result : results) {
            if (result.done()) {
                byte[] marked = Files.readAllBytes(result.source().target());
                for (Annotation mark : ScoreDocument.decode(marked).marks()) {
                    if (mark instanceof Annotation.Words words) {
                        all.add(words.text());
                    }
                }
            }
        }
        List<String> longer =
                all.stream().filter(text -> text.length() > Mark.Words.LONGEST).toList();
        assertTrue(50 * longer.size() <= all.size(), longer + " of " + all.size());
    }

    @Test
    void everyFourthSharedTuneKeepsTheLawsAndEveryEighthIsMarkedAgain() throws DiagnosedException, IOException {
        requireLawsOfSharedTunes(4, 30, 2);
    }

    @Tag("whole-library")
    @Test
    void sharedTunesKeepTheLaws() throws DiagnosedException, IOException {
        requireLawsOfSharedTunes(1, 100, 1);
    }

    private void requireLawsOfSharedTunes(int step, int least, int again) throws DiagnosedException, IOException {
        List<Path> tunes = Shared.scores("corpus/tunes");
        Path some = Files.createDirectories(folder.resolve("some"));
        for (int i = 0; i < tunes.size(); i += step) {
            Files.copy(tunes.get(i), some.resolve(tunes.get(i).getFileName()));
        }
        List<Result> results = checkLaws(some, mark(Annotators.defaultIds(), false, LITTLE_WORK), again);
        assertTrue(results.stream().filter(Result::done).count() > least, results.size() + " tunes");
    }
}
