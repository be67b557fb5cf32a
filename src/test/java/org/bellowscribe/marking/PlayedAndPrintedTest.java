package org.bellowscribe.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed never changes what is played, and what is played is asked for by itself. */
class PlayedAndPrintedTest {

    private static final List<List<String>> FEWER = List.of(
            List.of("buttons"),
            List.of("direction", "buttons", "left-hand"),
            List.of("air", "opening"),
            List.of("hand", "left-hand"),
            List.of("direction", "air", "left-hand"));

    /** Pieces of one text above a note: marks that meet there are written as one. */
    private static final String JOINTS = ", |\\+";

    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("samples", "book"))) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    private static MarkSettings settings(Played played, List<String> marks) throws DiagnosedException {
        return new MarkSettings(
                InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID),
                StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                marks,
                played,
                new SolverOptions(
                        MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT),
                KeyChoice.AS_WRITTEN,
                ReadingOptions.DEFAULT);
    }

    private static Decision.Decided decided(Path sample, Played played) throws DiagnosedException, IOException {
        MarkSettings settings = settings(played, Annotators.defaultIds());
        ReadTune read = new TuneReader(settings).read(Files.readAllBytes(sample), "tune", null);
        return assertInstanceOf(Decision.Decided.class, new TuneDecider(settings).decide(read));
    }

    private static MarkedTune marked(Decision.Decided decided, List<String> marks) throws DiagnosedException {
        return new TuneMarker(settings(Played.ALL, marks), LeftHandChoice.NONE, StageChoice.NONE).mark(decided);
    }

    // Each piece of each mark with its note; lines close up when one is left out, so their places do not count.
    private static Set<String> pieces(MarkedTune marked) {
        Set<String> pieces = new TreeSet<>();
        for (Annotation mark : marked.score().marks()) {
            if (mark instanceof Annotation.Syllable syllable) {
                pieces.add(syllable.noteIndex() + " " + syllable.name() + " " + syllable.text());
            } else if (mark instanceof Annotation.Words words) {
                Stream.of(words.text().split(JOINTS)).forEach(piece -> pieces.add(words.noteIndex() + " " + piece));
            }
        }
        return pieces;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aSheetWithFewerMarksOnlyLacksThemAndIsDecidedAlike(Path sample) throws DiagnosedException, IOException {
        Decision.Decided decided = decided(sample, Played.ALL);
        MarkedTune full = marked(decided, Annotators.defaultIds());
        Set<String> all = pieces(full);
        for (List<String> marks : FEWER) {
            MarkedTune fewer = marked(decided, marks);
            Set<String> added = pieces(fewer);
            added.removeAll(all);
            added.removeIf(piece -> piece.endsWith(" ·"));
            assertEquals(Set.of(), added, marks.toString());
            assertEquals(
                    full.score().withoutMarks().text(),
                    fewer.score().withoutMarks().text());
        }
    }

    @Test
    void aSheetWithoutAirMarksSaysThatTheAirButtonIsPressed() throws DiagnosedException, IOException {
        Decision.Decided decided = decided(Path.of("samples", "book", "the-leaning-gate.musicxml"), Played.ALL);
        assertTrue(decided.tune().solution().steps().stream().anyMatch(step -> step.air() != AirUse.NONE));
        Set<String> notes = marked(decided, List.of("buttons", "left-hand")).remarks().stream()
                .filter(remark -> remark.code() == DiagnosticCode.NOT_PRINTED)
                .map(remark -> remark.text().replaceAll("at .*,", "at N,"))
                .collect(Collectors.toSet());
        assertEquals(Set.of("The air button is pressed at N, and the sheet does not say where."), notes);
    }

    @Test
    void theMelodyAloneLeavesTheLeftHandAtRest() throws DiagnosedException, IOException {
        DecidedTune alone = decided(
                        Path.of("samples", "book", "nine-geese-over.musicxml"), new Played(true, false, true))
                .tune();
        assertTrue(alone.solution().steps().stream()
                .allMatch(step -> step.leftHand().isEmpty()));
    }

    @Test
    void theLeftHandAlonePressesNoButtonOfTheMelodyAndKeepsItsLettersAtTheNotes()
            throws DiagnosedException, IOException {
        Decision.Decided alone =
                decided(Path.of("samples", "book", "nine-geese-over.musicxml"), new Played(false, true, true));
        List<Step> steps = alone.tune().solution().steps();
        assertTrue(steps.stream().allMatch(step -> step.buttons().isEmpty()));
        assertTrue(steps.stream().anyMatch(step -> !step.leftHand().isEmpty()));
        Set<String> lines = marked(alone, Annotators.defaultIds()).score().marks().stream()
                .filter(mark -> mark instanceof Annotation.Syllable)
                .map(mark -> ((Annotation.Syllable) mark).name())
                .collect(Collectors.toSet());
        assertEquals(Set.of("left-hand"), lines);
    }

    @Test
    void someHandMustPlay() {
        assertThrows(IllegalArgumentException.class, () -> new Played(false, false, true));
    }
}
