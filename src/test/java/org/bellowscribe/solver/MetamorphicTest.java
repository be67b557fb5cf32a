package org.bellowscribe.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How the cost of a tune must follow when the tune, the instrument or the manner is changed. Equal measures are not
 * priced: with their price a tune is proved but for a gap.
 */
class MetamorphicTest {

    private static final String DANCE = "[G] G4 A4*1/2 B4*1/2 D5 B4 | [C] C5 E5 [D] D5 A4 | [G] B4*1/2 C5*1/2 D5 G5 D5"
            + " | [D] C5 A4 F#4 A4 | [Em] G4 E4 [D] F#4 A4 | [G] G4*2 r G4";
    private static final String SLOW = "[G] G4 B4 D5 B4 | G4 A4 B4 G4 | [D] D5 A4*2 F#4 | [G] B4 D5 G4*2";

    private static Solution solve(Tune tune, Instrument box, Manner manner) {
        SolverOptions options = new SolverOptions(manner, Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
        Outcome outcome = Solver.solve(tune, box, UsualPlan.of(tune, box), options);
        Solution solution = assertInstanceOf(Outcome.Solved.class, outcome).solution();
        assertTrue(solution.cost().isProved());
        return solution;
    }

    private static int cost(Tune tune, Instrument box) {
        return solve(tune, box, UnlikeManner.usual()).cost().total();
    }

    private static int costNowhereAtHome(Tune tune, Instrument box) {
        Manner usual = UnlikeManner.usual();
        Map<String, Points> byRule = new HashMap<>(usual.byRule());
        byRule.remove("home-row");
        Manner nowhere = new Manner("nowhere", "No row is home.", List.of(), byRule, List.of());
        return solve(tune, box, nowhere).cost().total();
    }

    private static Instrument box(String id) throws DiagnosedException {
        return InstrumentLibrary.find(id);
    }

    // Every reed takes the same air, whatever it sounds.
    private static Instrument evenReeds(Instrument box) {
        AirModel air = box.air();
        AirModel even = new AirModel(
                air.referenceFrequency(),
                0,
                air.least(),
                air.most(),
                air.voices(),
                air.bassFlow(),
                air.chordFlow(),
                air.chordWithoutThirdFlow(),
                air.loudnessSlack());
        return new Instrument(box.id(), box.name(), box.buttons(), box.leftHand(), box.bellows(), even);
    }

    private static Instrument withBellows(Instrument box, double capacity, double reserve) {
        Bellows usual = box.bellows();
        Bellows bellows = new Bellows(capacity, reserve, usual.lightAirFlow(), usual.fullAirFlow());
        return new Instrument(box.id(), box.name(), box.buttons(), box.leftHand(), bellows, box.air());
    }

    /** D/G = G/C + 7 = C/F + 2 = A/D + 5; with even reeds nothing but the names of the notes changes. */
    @ParameterizedTest
    @CsvSource({"gc-21, -7", "cf-21, -2", "ad-21, -5"})
    void tuneAndBoxMovedTogetherCostTheSame(String other, int semitones) throws DiagnosedException {
        for (String text : List.of(DANCE, SLOW)) {
            Tune tune = TuneText.of(text, 100);
            int here = cost(tune, evenReeds(box("dg-21")));
            assertEquals(here, cost(Transposition.of(tune, semitones), evenReeds(box(other))), text);
            assertTrue(here > 0);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {66, 90, 132})
    void largerBellowsNeverCostMore(double quartersPerMinute) throws DiagnosedException {
        Tune tune = TuneText.of(SLOW, quartersPerMinute);
        int before = Integer.MAX_VALUE;
        for (double highest : new double[] {14, 18, 25, 40, 80}) {
            // The reserve is the same amount of air at both ends.
            double capacity = highest + 3;
            int cost = cost(tune, withBellows(box("dg-21"), capacity, 3 / capacity));
            assertTrue(cost <= before, "capacity " + capacity + ": " + cost + " after " + before);
            before = cost;
        }
    }

    /**
     * A box that pulls what this one pushes: the bellows do in a mirror what they did. Which row is home is told by what is
     * pushed, so none of it is.
     */
    @Test
    void boxWithPushAndPullExchangedCostsTheSame() throws DiagnosedException {
        Instrument box = box("dg-21");
        List<Button> buttons = box.buttons().stream()
                .map(each -> new Button(each.row(), each.number(), each.pull(), each.push()))
                .toList();
        List<LeftHandButton> leftHand = box.leftHand().stream()
                .map(each -> new LeftHandButton(each.column(), each.number(), each.pull(), each.push()))
                .toList();
        Instrument mirrored = new Instrument("mirrored", "mirrored", buttons, leftHand, box.bellows(), box.air());
        for (String text : List.of(DANCE, SLOW)) {
            Tune tune = TuneText.of(text, 100);
            assertEquals(costNowhereAtHome(tune, box), costNowhereAtHome(tune, mirrored));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"far-button per-button", "measure-reversal slow"})
    void ruleMoreNeverMakesATuneCheaper(String ruleAndCase) throws DiagnosedException {
        String[] name = ruleAndCase.split(" ", -1);
        Manner usual = UnlikeManner.usual();
        Map<String, Points> byRule = new HashMap<>(usual.byRule());
        Map<String, Integer> dearer = new HashMap<>(byRule.get(name[0]).byCase());
        dearer.merge(name[1], 3, Integer::sum);
        byRule.put(name[0], new Points(dearer));
        Manner more = new Manner("more", "One rule more.", List.of(), byRule, List.of());
        for (String text : List.of(DANCE, SLOW)) {
            Tune tune = TuneText.of(text, 100);
            int with = solve(tune, box("dg-21"), more).cost().total();
            assertTrue(with >= cost(tune, box("dg-21")), text);
        }
    }

    /** D A A D begins and ends on one pushed button, so the seam is free; with even reeds it closes by itself. */
    @Test
    void measureRepeatedOrWrittenTwiceCostsTheSameEachTime() throws DiagnosedException {
        Instrument box = evenReeds(box("dg-21"));
        String measure = "[D] D4 [A] E4 C#5 [D] D4";
        int repeated = cost(TuneText.of(measure, 100, List.of(0, 0)), box);
        assertTrue(repeated > 0);
        assertEquals(2 * repeated, cost(TuneText.of(measure + " | " + measure, 100), box));
    }

    /** Marks that hold on every pass hold written out; written out they may also differ, and then cost less. */
    @ParameterizedTest
    @ValueSource(strings = {DANCE, SLOW})
    void writtenOutNeverCostsMoreThanTwiceRepeated(String text) throws DiagnosedException {
        int measures = text.split("\\|", -1).length;
        List<Integer> order = new java.util.ArrayList<>();
        for (int i = 0; i < 2 * measures; i++) {
            order.add(i % measures);
        }
        // Without the left hand, whose points under the last note differ.
        Instrument box = box("dg-21");
        Instrument melody = new Instrument("melody", "melody", box.buttons(), List.of(), box.bellows(), box.air());
        int repeated = cost(TuneText.of(text, 100, order), melody);
        int written = cost(TuneText.of(text + " | " + text, 100), melody);
        assertTrue(written <= 2 * repeated, written + " written out, " + repeated + " repeated");
    }
}
