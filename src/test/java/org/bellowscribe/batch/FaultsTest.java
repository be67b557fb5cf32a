package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.marking.KeyChoice;
import org.bellowscribe.marking.LeftHandChoice;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every change of a file that a run makes goes wrong once: the disk is full, or a move or a removal fails. */
class FaultsTest {

    private static final Path TUNE = Path.of("samples", "book", "two-ducks.musicxml");
    private static final String OLDER = "an older result";

    @TempDir
    Path folder;

    private final MarkPlan plan = plan();

    private static MarkPlan plan() {
        MarkSettings settings = new MarkSettings(
                InstrumentLibrary.library().of(InstrumentLibrary.DEFAULT_ID).instrument(),
                StyleLibrary.library().of(StyleLibrary.DEFAULT_ID),
                Annotators.defaultIds(),
                Played.ALL,
                new SolverOptions(
                        MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT),
                KeyChoice.AS_WRITTEN,
                ReadingOptions.DEFAULT);
        assertNotNull(PatternLibrary.usual());
        return new MarkPlan(
                settings,
                Outputs.SCORE.withRecord(true).withLeftHand(new LeftHandChoice(false, true)),
                new Wanted.Beside(List.of(Source.RECORD, LeftHandChoice.SHEET), 0),
                new MarkPlan.Fingerprint("", "", ""));
    }

    /** A short score, so that hundreds of runs take no time: the first measures of a tune of the demo book. */
    @BeforeEach
    void book() throws IOException {
        String score = Files.readString(TUNE);
        int fifth = score.indexOf("<measure number=\"3\"");
        Files.createDirectories(folder.resolve("in"));
        Files.writeString(folder.resolve("in/tune.musicxml"), score.substring(0, fifth) + "</part></score-partwise>");
    }

    private record Run(Result result, Diagnostic trouble, List<String> changes) {}

    private Run run(Path out, int faulty) {
        FaultyFiles files = new FaultyFiles(folder, faulty);
        Path place = files.faulty(out);
        Wanted wanted = Wanted.all(List.of(folder + "/in"), plan.beside());
        Source source = Sources.find(wanted, place).found().get(0);
        Keeping keeping = new Keeping(Ledger.open(place, ""), Keeping.Mode.WRITE, false, false);
        Result result = Jobs.mark(any -> plan, keeping).run(source);
        return new Run(result, keeping.tidy(), files.changes());
    }

    private static Map<String, String> files(Path out) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (Files.exists(out)) {
            try (Stream<Path> below = Files.list(out)) {
                for (Path file : below.toList()) {
                    files.put(file.getFileName().toString(), Files.readString(file));
                }
            }
        }
        return files;
    }

    private void failEach(boolean older) throws IOException {
        byte[] score = Files.readAllBytes(folder.resolve("in/tune.musicxml"));
        Run undisturbed = run(folder.resolve("whole"), -1);
        assertTrue(undisturbed.result().done());
        Map<String, String> whole = files(folder.resolve("whole"));
        assertEquals(4, whole.size(), whole.keySet().toString());
        int changes = changes(older).size();
        List<String> faults = new ArrayList<>();
        for (int faulty = 0; faulty < changes; faulty++) {
            Path out = folder.resolve("out" + faulty);
            prepare(out, older);
            Run run = run(out, faulty);
            String fault = run.changes().get(faulty);
            faults.add(fault);
            assertWholeOrOld(files(out), whole, fault);
            assertToldOrHarmless(run, files(out), whole);
            assertArrayEquals(score, Files.readAllBytes(folder.resolve("in/tune.musicxml")));
            run(out, -1);
            Map<String, String> resumed = files(out);
            resumed.keySet().removeIf(name -> name.endsWith(".part"));
            assertEquals(whole, resumed, "gone on after a failed " + fault);
        }
        assertTrue(new TreeSet<>(faults).containsAll(List.of("open", "write", "close", "move")), faults.toString());
    }

    private void prepare(Path out, boolean older) throws IOException {
        if (older) {
            Files.createDirectories(out);
            for (String name : List.of("tune.musicxml", "tune.record.json", "tune.left-hand.musicxml")) {
                Files.writeString(out.resolve(name), OLDER);
            }
        }
    }

    private List<String> changes(boolean older) throws IOException {
        Path out = folder.resolve("counted");
        prepare(out, older);
        return run(out, -1).changes();
    }

    private static void assertWholeOrOld(Map<String, String> files, Map<String, String> whole, String fault) {
        files.forEach((name, text) -> {
            if (name.endsWith(".part")) {
                assertEquals("delete", fault, "left there only if it could not be removed");
            } else if (!name.startsWith(".")) {
                // Where a sheet could not be written, the record says so.
                boolean refusal = name.endsWith(Source.RECORD)
                        && text.contains("\"outcome\": \"refused\"")
                        && text.endsWith("}\n");
                assertTrue(
                        refusal || text.equals(whole.get(name)) || text.equals(OLDER),
                        name + " after a failed " + fault);
            }
        });
    }

    private static void assertToldOrHarmless(Run run, Map<String, String> files, Map<String, String> whole) {
        boolean told = run.result().diagnostics().stream()
                .anyMatch(remark -> remark.code() == DiagnosticCode.UNWRITABLE
                        && remark.text().contains("No space"));
        assertEquals(run.result().done(), !told);
        boolean all = whole.keySet().stream()
                .filter(name -> !name.startsWith("."))
                .allMatch(name -> whole.get(name).equals(files.get(name)));
        assertTrue(told || all, "what is not told has done no harm");
        boolean remembered = whole.get(".bellowscribe-results").equals(files.get(".bellowscribe-results"));
        assertTrue(told || remembered || run.trouble() != null || files.containsKey(".bellowscribe-results"));
    }

    @Test
    void everyChangeFailsOnceInAnEmptyFolder() throws IOException {
        failEach(false);
    }

    @Test
    void everyChangeFailsOnceWhereOlderResultsStand() throws IOException {
        failEach(true);
    }

    @Test
    void temporaryFileOfARunThatWasKilledGoesWithTheNextButOne() throws Exception {
        Path out = folder.resolve("out");
        Files.createDirectories(out);
        Path left = Files.writeString(out.resolve(".bellowscribe-1.part"), "half a");
        java.time.Instant now = java.time.Instant.now();
        AtomicFile.removeLeftovers(out, now);
        assertTrue(Files.exists(left), "another run may be writing it");
        AtomicFile.removeLeftovers(out, now.plusSeconds(601));
        assertFalse(Files.exists(left));
        AtomicFile.write(out.resolve("a"), "a".getBytes(StandardCharsets.UTF_8));
        assertEquals(Map.of("a", "a"), files(out));
    }
}
