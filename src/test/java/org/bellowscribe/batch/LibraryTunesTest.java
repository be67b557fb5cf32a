package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bellowscribe.Shared;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.fit.FitOptions;
import org.bellowscribe.fit.Fitting;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;
import org.bellowscribe.marking.KeyChoice;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Instruments of the library mark ten short tunes each, transposed to the key that suits them best, through the whole chain;
 * what the replay does not find clean is not written. The first instrument of each family; all of them, with a table in
 * {@code target/library-tunes.txt}, with {@code -Dmeasure=whole-library}.
 */
class LibraryTunesTest {

    private static final int TUNES = 10;
    private static final int SHORT = 20_000;
    private static final Path TABLE = Path.of("target", "library-tunes.txt");
    private static final SolverOptions SOLVER =
            new SolverOptions(MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, FitOptions.CELL_LIMIT);

    private static final List<Path> SCORES = new ArrayList<>();
    private static final List<Tune> READ = new ArrayList<>();

    @TempDir
    Path folder;

    static List<Instrument> ofEachFamily() {
        Set<String> families = new HashSet<>();
        return InstrumentLibrary.all().stream()
                .filter(entry -> families.add(entry.family()))
                .map(LibraryEntry::instrument)
                .toList();
    }

    static List<Instrument> all() {
        return InstrumentLibrary.all().stream().map(LibraryEntry::instrument).toList();
    }

    @ParameterizedTest
    @MethodSource("ofEachFamily")
    void firstInstrumentOfEachFamilyMarksTenTunesInItsKeys(Instrument instrument)
            throws DiagnosedException, IOException {
        markTenTunes(instrument);
    }

    @Tag("whole-library")
    @ParameterizedTest
    @MethodSource("all")
    void everyInstrumentMarksTenTunesInItsKeys(Instrument instrument) throws DiagnosedException, IOException {
        String before = Files.exists(TABLE) ? Files.readString(TABLE) : "";
        Files.writeString(TABLE, before + markTenTunes(instrument));
    }

    /** Returns the line of the table. */
    private String markTenTunes(Instrument instrument) throws DiagnosedException, IOException {
        List<Path> scores = shortScores();
        int marked = 0;
        int refused = 0;
        TreeMap<Integer, Integer> moves = new TreeMap<>();
        for (int i = 0; i < scores.size() && marked < TUNES; i++) {
            Trial easiest = easiest(tune(scores.get(i), i), instrument);
            if (easiest.obstacle() != null) {
                continue;
            }
            Result result = mark(scores.get(i), instrument, easiest.semitones());
            requireSound(result);
            if (result.done()) {
                marked++;
                moves.merge(easiest.semitones(), 1, Integer::sum);
            } else {
                refused++;
            }
        }
        assertTrue(marked >= TUNES, "%s marks only %d tunes".formatted(instrument.id(), marked));
        return "%-22s %2d marked, %d refused, moved by %s%n"
                .formatted(
                        instrument.id(),
                        marked,
                        refused,
                        moves.entrySet().stream()
                                .map(move -> "%+d: %d".formatted(move.getKey(), move.getValue()))
                                .collect(Collectors.joining(", ")));
    }

    // Boxes differ in the notes that they have, and a short tune has most of them.
    private static List<Path> shortScores() {
        return Shared.scores("corpus/tunes").stream()
                .filter(score -> score.toString().endsWith("xml"))
                .filter(score -> score.toFile().length() < SHORT)
                .toList();
    }

    private static void requireSound(Result result) {
        Set<DiagnosticCode> ours = Set.of(DiagnosticCode.REPLAY, DiagnosticCode.INTERNAL);
        assertEquals(
                List.of(),
                result.diagnostics().stream()
                        .filter(remark -> ours.contains(remark.code()))
                        .toList());
    }

    /** Scores are read once for all instruments. */
    private static Tune tune(Path score, int place) throws IOException, DiagnosedException {
        if (place == SCORES.size()) {
            String text = ScoreDocument.decode(Files.readAllBytes(score)).text();
            SCORES.add(score);
            READ.add(ScoreReader.read(text, "tune", ReadingOptions.DEFAULT));
        }
        return READ.get(place);
    }

    private static Trial easiest(Tune tune, Instrument instrument) {
        List<Integer> octave = IntStream.rangeClosed(-12, 12).boxed().toList();
        return Fitting.rank(tune, List.of(instrument), new FitOptions(octave, 0, SOLVER))
                .get(0);
    }

    private Result mark(Path score, Instrument instrument, int semitones) throws DiagnosedException {
        MarkSettings settings = new MarkSettings(
                instrument,
                StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                Annotators.defaultIds(),
                Played.ALL,
                SOLVER,
                new KeyChoice(semitones, false),
                ReadingOptions.DEFAULT);
        Source source = new Source(score, score.toString(), folder.resolve("marked-" + score.getFileName()));
        return Jobs.mark(settings, Outputs.SCORE).run(source);
    }
}
