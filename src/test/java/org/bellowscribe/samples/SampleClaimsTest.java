package org.bellowscribe.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;

/** Samples that are made to show something on the usual D/G box show it. */
class SampleClaimsTest {

    private static final BellowsDirection PUSH = BellowsDirection.PUSH;
    private static final BellowsDirection PULL = BellowsDirection.PULL;
    private static final String UNPLAYABLE = "the-stile-that-is-not-there";

    private final Instrument box = InstrumentLibrary.find("dg-21");

    SampleClaimsTest() throws DiagnosedException {}

    @Test
    void missingStileAsksForTheOneNoteThatTheBoxLacks() throws DiagnosedException {
        assertEquals(Set.of(Pitch.parse("G#4")), missing(Sample.of(UNPLAYABLE).tune()));
    }

    @Test
    void boxHasTheNotesOfAllOtherTunes() throws DiagnosedException {
        for (Sample sample : Sample.all()) {
            if (!sample.name().equals(UNPLAYABLE)) {
                assertEquals(Set.of(), missing(sample.tune()), sample::name);
            }
        }
    }

    @Test
    void firstPolkaStaysOnButtonsThreeToSixOfTheOuterRow() throws DiagnosedException {
        List<Button> hand = box.buttons().stream()
                .filter(button -> button.row() == 1 && button.number() >= 3 && button.number() <= 6)
                .toList();
        Set<Pitch> reach = hand.stream()
                .flatMap(button -> Stream.of(button.push(), button.pull()))
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        for (Event event : Sample.of("dots-first-polka").tune().events()) {
            assertTrue(reach.containsAll(event.pitches()), event::toString);
        }
    }

    @Test
    void leaningGateNeedsTheBassOfDInBothDirections() throws DiagnosedException {
        Tune tune = Sample.of("the-leaning-gate").tune();
        Set<Set<BellowsDirection>> needed = tune.harmonies().stream()
                .filter(harmony ->
                        harmony.chord() != null && harmony.chord().toString().equals("D"))
                .map(harmony -> directions(first(tune, harmony.measure()).pitches()))
                .collect(Collectors.toSet());
        assertTrue(needed.containsAll(Set.of(Set.of(PUSH), Set.of(PULL))), needed::toString);
        assertNotEquals(bass("D", PUSH), bass("D", PULL));
    }

    @Test
    void everyGroupOfTwoDucksHasADirection() throws DiagnosedException {
        List<Event> pairs = Sample.of("two-ducks").tune().events().stream()
                .filter(event -> event.pitches().size() == 2)
                .toList();
        assertTrue(pairs.size() > 20, () -> "only " + pairs.size());
        pairs.forEach(pair -> assertTrue(!directions(pair.pitches()).isEmpty(), pair::toString));
    }

    /** Each measure of the song goes one way: its notes all have that direction, and so has its chord's root. */
    @Test
    void eachPhraseOfOutAndInIsHalfPushHalfPull() throws DiagnosedException {
        Tune tune = Sample.of("out-and-in").tune();
        for (int phrase = 0; phrase < 16; phrase += 4) {
            int pushes = 0;
            for (int measure = phrase; measure < phrase + 4; measure++) {
                Set<BellowsDirection> ways = ways(tune, measure);
                assertEquals(1, ways.size(), "measure " + (measure + 1));
                pushes += ways.contains(PUSH) ? 1 : 0;
            }
            assertEquals(2, pushes, "the phrase from measure " + (phrase + 1));
        }
    }

    @Test
    void cheapestWayToPlayOutAndInLeavesTheAirButtonAlone() throws DiagnosedException {
        Tune tune = Sample.of("out-and-in").tune();
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.ONCE, true, SolverOptions.USUAL_CELL_LIMIT);
        Outcome outcome = Solver.solve(tune, box, UsualPlan.of(tune, box), options);
        List<Step> steps =
                assertInstanceOf(Outcome.Solved.class, outcome).solution().steps();
        steps.forEach(step -> assertEquals(AirUse.NONE, step.air(), step::toString));
    }

    private Set<Pitch> missing(Tune tune) {
        return tune.events().stream()
                .flatMap(event -> event.pitches().stream())
                .filter(pitch -> directions(List.of(pitch)).isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Returns the directions in which all pitches can sound together. */
    private Set<BellowsDirection> directions(List<Pitch> pitches) {
        return Stream.of(PUSH, PULL)
                .filter(way -> pitches.stream()
                        .allMatch(pitch -> box.buttons().stream().anyMatch(button -> pitch.equals(button.pitch(way)))))
                .collect(Collectors.toSet());
    }

    private Set<BellowsDirection> ways(Tune tune, int measure) {
        Set<BellowsDirection> ways = directions(tune.events().stream()
                .filter(event -> event.measure() == measure)
                .flatMap(event -> event.pitches().stream())
                .toList());
        ChordSymbol chord = tune.harmonies().stream()
                .filter(harmony -> harmony.measure() == measure)
                .findFirst()
                .orElseThrow()
                .chord();
        return ways.stream()
                .filter(way ->
                        !bass(String.valueOf(chord).replace("m", ""), way).isEmpty())
                .collect(Collectors.toSet());
    }

    /** Returns the ids of the bass buttons that sound a note in a direction. */
    private Set<String> bass(String note, BellowsDirection way) {
        return box.leftHand().stream()
                .filter(button -> button.sound(way) != null
                        && button.sound(way).kind() == LeftHandKind.BASS
                        && button.sound(way).label().equals(note))
                .map(button -> button.id())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Event first(Tune tune, int measure) {
        return tune.events().stream()
                .filter(event -> event.measure() == measure)
                .findFirst()
                .orElseThrow();
    }
}
