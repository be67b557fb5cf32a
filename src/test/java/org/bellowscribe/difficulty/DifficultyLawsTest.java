package org.bellowscribe.difficulty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.difficulty.grading.Term;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.PlayOrder;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.junit.jupiter.api.Test;

/** How difficulty must follow when a tune, its marks or its box change. */
class DifficultyLawsTest {

    private static final Instrument BOX = Deciding.box("dg-21");
    private static final DecidedTune JIG = decided("crab-apple-jig");
    private static final DecidedTune WALTZ = decided("the-leaning-gate");

    /** Times are sums of binary fractions, which differ in the last digits. */
    private static final double NOISE = 1e-9;

    /** What the tune and the box decide, term by term; the terms of the easiest way are held together. */
    private static final Set<Term> OF_THE_BOX = EnumSet.of(
            Term.NOTES,
            Term.OFF_PUSH,
            Term.ONE_WAY,
            Term.LEAPS,
            Term.RANGE,
            Term.RUN,
            Term.DRIFT,
            Term.LEFT_HAND_BETWEEN);

    private static DecidedTune decided(String sample) {
        return Objects.requireNonNull(Deciding.decide(Deciding.sample(sample), BOX));
    }

    private static void assertNoEasier(DecidedTune easier, DecidedTune harder) {
        List<TermPoints> less = Difficulty.of(easier).terms();
        List<TermPoints> more = Difficulty.of(harder).terms();
        for (int i = 0; i < less.size(); i++) {
            Term term = less.get(i).term();
            double fall = less.get(i).figure() - more.get(i).figure();
            assertTrue(!OF_THE_BOX.contains(term) || fall <= NOISE, term + " falls by " + fall);
        }
        assertTrue(ofTheWay(less) <= ofTheWay(more) + NOISE, "the easiest way");
        assertTrue(
                Difficulty.of(easier).points() <= Difficulty.of(harder).points() + NOISE,
                easier.tune().title());
    }

    private static double ofTheWay(List<TermPoints> terms) {
        return terms.stream()
                .filter(each -> EasiestWay.TERMS.contains(each.term()))
                .mapToDouble(TermPoints::points)
                .sum();
    }

    @Test
    void fasterATuneIsNoEasier() {
        for (DecidedTune tune : List.of(JIG, WALTZ)) {
            List<Double> factors = List.of(0.3, 0.5, 0.8, 0.95, 1.0, 1.05, 1.3, 2.0, 5.0);
            for (int i = 1; i < factors.size(); i++) {
                assertNoEasier(Deciding.faster(tune, factors.get(i - 1)), Deciding.faster(tune, factors.get(i)));
            }
        }
    }

    @Test
    void withNewNotesBeforeOrAfterATuneIsNoEasier() {
        DecidedTune waltz = at(WALTZ, JIG.tune().tempo());
        assertNoEasier(JIG, followed(JIG, WALTZ));
        assertNoEasier(waltz, followed(WALTZ, JIG));
        assertNoEasier(JIG, followed(WALTZ, JIG));
    }

    private static DecidedTune at(DecidedTune decided, Tempo tempo) {
        double now = decided.tune().tempo().quartersPerMinute();
        return Deciding.faster(decided, tempo.quartersPerMinute() / now);
    }

    /** Returns a tune that goes on as another, both at the tempo of the jig. */
    private static DecidedTune followed(DecidedTune first, DecidedTune second) {
        Tune a = first.tune();
        Tune b = second.tune();
        List<Measure> measures = new ArrayList<>(a.measures());
        b.measures()
                .forEach(m -> measures.add(new Measure(
                        m.index() + a.measures().size(), "", m.length(), m.beatOffset(), m.time(), m.key())));
        List<Step> steps = new ArrayList<>(first.solution().steps());
        second.solution().steps().forEach(step -> {
            Event e = step.event();
            steps.add(step.with(new Event(
                    e.index() + a.events().size(),
                    e.measure() + a.measures().size(),
                    e.onset(),
                    e.duration(),
                    e.pitches(),
                    e.noteIndices(),
                    e.heldOver(),
                    e.slurred())));
        });
        List<Integer> order = new ArrayList<>(a.playOrder().measures());
        b.playOrder()
                .measures()
                .forEach(measure -> order.add(measure + a.measures().size()));
        List<Event> events = steps.stream().map(Step::event).toList();
        Tune joined = new Tune(
                "joined", a.part(), measures, events, List.of(), JIG.tune().tempo(), new PlayOrder(order), List.of());
        return with(first, joined, steps);
    }

    private static DecidedTune with(DecidedTune decided, Tune tune, List<Step> steps) {
        Solution old = decided.solution();
        Solution solution = new Solution(steps, old.again(), old.cost(), List.of());
        return new DecidedTune(decided.task(), tune, tune, false, solution, decided.steered());
    }

    @Test
    void noStageIsHarderThanTheWhole() {
        for (DecidedTune tune : List.of(JIG, WALTZ)) {
            DecidedTune right = stage(tune, true, false);
            DecidedTune left = stage(tune, false, true);
            assertNoEasier(right, tune);
            assertNoEasier(left, tune);
            assertNoEasier(Deciding.faster(right, 0.6), tune);
        }
    }

    private static DecidedTune stage(DecidedTune decided, boolean rightHand, boolean leftHand) {
        List<Step> steps = decided.solution().steps().stream()
                .map(s -> new Step(
                        s.event(),
                        s.direction(),
                        rightHand ? s.buttons() : List.of(),
                        rightHand ? s.fingers() : List.of(),
                        s.handOn(),
                        s.held(),
                        leftHand ? s.leftHand() : List.of(),
                        leftHand ? s.air() : AirUse.NONE,
                        s.openingBefore(),
                        s.openingAfter(),
                        s.airTaken()))
                .toList();
        return with(decided, decided.tune(), steps);
    }

    @Test
    void aBoxBuiltForTheLeftHandedIsAsHard() {
        List<Button> mirrored = BOX.buttons().stream()
                .map(b -> new Button(b.row(), b.number(), b.push(), b.pull(), Hand.LEFT))
                .toList();
        Instrument left = new Instrument("left", "Left", mirrored, BOX.leftHand(), BOX.bellows(), BOX.air());
        DecidedTune other = Objects.requireNonNull(Deciding.decide(WALTZ.tune(), left));
        assertEquals(Difficulty.of(WALTZ).terms(), Difficulty.of(other).terms());
    }

    @Test
    void withoutAButtonThatWasUsedATuneIsNoEasier() {
        List<Button> used = WALTZ.solution().steps().stream()
                .flatMap(step -> step.buttons().stream())
                .distinct()
                .toList();
        int played = 0;
        for (Button button : used) {
            DecidedTune other = Deciding.decide(WALTZ.tune(), Deciding.without(BOX, button));
            if (other != null) {
                played++;
                assertNoEasier(WALTZ, other);
            }
        }
        assertTrue(played > 0);
    }

    @Test
    void decidedAnewForAFasterTempoATuneIsNoEasier() {
        double before = 0;
        for (double factor : List.of(0.5, 1.0, 1.5)) {
            DecidedTune faster = Objects.requireNonNull(Deciding.decide(Deciding.faster(WALTZ.tune(), factor), BOX));
            assertTrue(Difficulty.of(faster).points() >= before, "at " + factor);
            before = Difficulty.of(faster).points();
        }
    }
}
