package org.bellowscribe.solver.manner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Times;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What each manner of playing promises in its sentence, over every second sample on the usual box. */
class MannerPromisesTest {

    private static final long CELL_LIMIT = 60_000;
    private static final double HALF_OPEN = halfOpen();
    private static final Map<String, Figures> FOUND = new TreeMap<>();

    /** Counts over all tunes in one manner, on the sheet, each event once. */
    private static final class Figures {
        private int reversals;
        private int rowChanges;
        private int shifts;
        private int buttons;
        private int unlike;
        private int silentFirstBeats;
        private int wanted;
        private int met;
        private int onTheBox;
        private int lightPresses;
        private int fullPresses;
        private int offTheMiddle;

        void add(Solution solution) {
            Set<String> used = new HashSet<>();
            Step before = null;
            for (Step step : solution.steps()) {
                step.buttons().forEach(button -> used.add(button.id()));
                step.leftHand().forEach(this::add);
                lightPresses += step.air() == AirUse.LIGHT ? 1 : 0;
                fullPresses += step.air() == AirUse.FULL ? 1 : 0;
                offTheMiddle += Math.abs(step.openingAfter() - HALF_OPEN) > HALF_OPEN / 2 ? 1 : 0;
                if (before != null) {
                    reversals += before.direction() == step.direction() ? 0 : 1;
                    shifts += before.handOn() == step.handOn() ? 0 : 1;
                    boolean rows =
                            !before.buttons().isEmpty() && !step.buttons().isEmpty();
                    rowChanges += rows && row(before) != row(step) ? 1 : 0;
                }
                before = step;
            }
            buttons += used.size();
            unlike += solution.unlike().size();
        }

        private static int row(Step step) {
            return step.buttons().get(0).row();
        }

        private void add(LeftHandPlay play) {
            silentFirstBeats += play.wanted().firstBeat() && play.sound() == null ? 1 : 0;
            wanted++;
            met += play.fit() == LeftHandFit.EXACT || play.fit() == LeftHandFit.PLAIN_ROOT ? 1 : 0;
            onTheBox += isOnTheBox(play) ? 1 : 0;
        }
    }

    // On either side of the bellows.
    private static boolean isOnTheBox(LeftHandPlay play) {
        List<LeftHandSound> sounds =
                InstrumentLibrary.library().of(InstrumentLibrary.DEFAULT_ID).instrument().leftHand().stream()
                        .flatMap(button -> Stream.of(button.push(), button.pull()))
                        .filter(Objects::nonNull)
                        .toList();
        return play.wanted().harmonies().stream()
                .anyMatch(harmony -> sounds.stream()
                        .anyMatch(sound -> LeftHandFit.of(play.wanted(), harmony.chord(), sound) == LeftHandFit.EXACT));
    }

    @BeforeAll
    static void markTheSamples() throws DiagnosedException, IOException {
        Instrument box = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);
        List<Path> scores;
        try (Stream<Path> files = Files.list(Path.of("samples", "book"))) {
            scores = files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
        for (int i = 0; i < scores.size(); i += 2) {
            String text =
                    ScoreDocument.decode(Files.readAllBytes(scores.get(i))).text();
            Tune tune = ScoreReader.read(text, "sample", ReadingOptions.DEFAULT);
            for (Manner manner : MannerLibrary.all()) {
                SolverOptions options = new SolverOptions(manner, Times.AGAIN, true, CELL_LIMIT);
                if (Solver.solve(tune, box, UsualPlan.of(tune, box), options) instanceof Outcome.Solved solved) {
                    FOUND.computeIfAbsent(manner.id(), id -> new Figures()).add(solved.solution());
                }
            }
        }
    }

    // Thousandths of a liter, as openings are.
    private static double halfOpen() {
        return InstrumentLibrary.library()
                        .of(InstrumentLibrary.DEFAULT_ID)
                        .instrument()
                        .bellows()
                        .capacity()
                * 500;
    }

    private static Figures of(String manner) {
        return FOUND.getOrDefault(manner, new Figures());
    }

    private static void assertLeast(String manner, String what, ToIntFunction<Figures> figure) {
        FOUND.forEach((id, figures) -> assertTrue(
                figure.applyAsInt(of(manner)) <= figure.applyAsInt(figures),
                () -> "%s has %d %s, %s %d"
                        .formatted(manner, figure.applyAsInt(of(manner)), what, id, figure.applyAsInt(figures))));
    }

    @Test
    void learnerHasTheFewestButtonsRowChangesAndMovesOfTheHand() {
        assertLeast("learner", "buttons", figures -> figures.buttons);
        assertLeast("learner", "row changes", figures -> figures.rowChanges);
        assertLeast("learner", "moves of the hand", figures -> figures.shifts);
    }

    @Test
    void learnerPlaysEqualMeasuresAlike() {
        assertEquals(0, of("learner").unlike);
    }

    @Test
    void learnerIsNeverSilentOnAFirstBeat() {
        assertEquals(0, of("learner").silentFirstBeats);
    }

    @Test
    void chordsFirstHasMoreOfTheWantedSoundsThanAnyOther() {
        assertLeast("chords-first", "wanted sounds missing", figures -> figures.wanted - figures.met);
    }

    @Test
    void chordsFirstHasNearlyAllWantedSoundsThatTheBoxHas() {
        assertTrue(of("chords-first").met >= 0.98 * of("chords-first").onTheBox);
    }

    @Test
    void acrossTheRowsHasTheFewestReversals() {
        assertLeast("across-the-rows", "reversals", figures -> figures.reversals);
    }

    @Test
    void airStudyIsSomewhereElseThanInTheMiddleHalfOfTheBellowsLeastOften() {
        assertLeast("air-study", "notes off the middle half", figures -> figures.offTheMiddle);
    }

    @Test
    void airStudyPressesAtTheSamePlaceOfEqualMeasures() {
        assertEquals(0, of("air-study").unlike);
    }

    @Test
    void airStudyPressesLightly() {
        assertEquals(0, of("air-study").fullPresses);
        assertTrue(of("air-study").lightPresses > 0);
    }
}
