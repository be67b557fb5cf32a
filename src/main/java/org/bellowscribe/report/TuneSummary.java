package org.bellowscribe.report;

import java.util.HashSet;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.lefthand.LeftHandTally;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Cost;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Key;

/**
 * The figures of a marked tune.
 *
 * @param title its title
 * @param measures written measures, those of rests and held notes too; those of nothing but a bar line are no measures
 * @param reversals changes of bellows direction in one playing, with all repeats
 * @param airMarks places of the sheet where the air button is pressed
 * @param startPercent how far open the bellows are at the start, in percent of the capacity
 * @param cost what the marks cost
 * @param leftHand how much of the left hand is as wanted
 * @param playOrder the measures in the order in which they sound, by their printed numbers; empty if they sound just as
 *     they are written
 * @param key how the key is not that of the file, such as {@code in A (+2)}; empty if it is
 */
public record TuneSummary(
        String title,
        int measures,
        int reversals,
        int airMarks,
        int startPercent,
        Cost cost,
        LeftHandTally leftHand,
        String playOrder,
        String key) {

    /** Returns the figures of a tune. */
    public static TuneSummary of(DecidedTune decided) {
        Tune tune = decided.tune();
        Instrument instrument = decided.instrument();
        Solution solution = decided.solution();
        List<Integer> order = tune.eventOrder();
        int reversals = 0;
        for (int i = 0; i < order.size(); i++) {
            Step step = solution.steps().get(order.get(i));
            boolean turns = i > 0 && solution.steps().get(order.get(i - 1)).direction() != step.direction();
            reversals += turns ? 1 : 0;
        }
        int airMarks = (int) solution.steps().stream()
                .filter(step -> step.air() != AirUse.NONE)
                .count();
        double start = solution.steps().get(order.get(0)).openingBefore() / 1000.0;
        int percent = (int) Math.round(100 * start / instrument.bellows().capacity());
        return new TuneSummary(
                tune.title(),
                (int) tune.measures().stream()
                        .filter(measure -> measure.length().isPositive())
                        .count(),
                reversals,
                airMarks,
                percent,
                solution.cost(),
                LeftHandTally.of(instrument, solution),
                playOrder(tune),
                key(decided));
    }

    private static String key(DecidedTune decided) {
        String how = decided.notesKept() ? "notes as written, sounds in" : "transposed to";
        Key key = decided.tune().measures().get(0).key();
        String signs = key.hasManySigns() ? ", " + key.signs() : "";
        return decided.transposedBy() == 0
                ? ""
                : "%s %s (%+d)%s".formatted(how, key.name(), decided.transposedBy(), signs);
    }

    private static String playOrder(Tune tune) {
        List<Integer> written = tune.measures().stream().map(Measure::index).toList();
        if (tune.playOrder().measures().equals(written)) {
            return "";
        }
        // Numbers count as printed where they tell the measures apart.
        List<String> numbers = tune.measures().stream().map(Measure::number).toList();
        boolean clear = !numbers.contains("") && new HashSet<>(numbers).size() == numbers.size();
        List<String> places = written.stream().map(i -> String.valueOf(i + 1)).toList();
        return tune.playOrder().sections(clear ? numbers : places);
    }
}
