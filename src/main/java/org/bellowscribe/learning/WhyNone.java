package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** Tells why no points at all can make what was marked cheaper than its rivals. */
final class WhyNone {

    private static final double NOTHING = 1e-6;
    private static final int MOST_NAMED = 3;

    private final Table table;

    WhyNone(Table table) {
        this.table = table;
    }

    /**
     * Returns the reason; empty if some points can.
     *
     * @param differences for each rival, how much more often it meets each case
     */
    String of(List<double[]> differences) {
        for (double[] difference : differences) {
            List<String> less = new ArrayList<>();
            boolean more = false;
            for (int i = 0; i < difference.length; i++) {
                more |= difference[i] > NOTHING;
                if (difference[i] < -NOTHING) {
                    less.add(table.at(i).toString());
                }
            }
            if (!more) {
                return less.isEmpty()
                        ? "other marks meet every rule just as often"
                        : "other marks meet no rule more often, and these less often: " + named(less);
            }
        }
        return isPossible(differences)
                ? ""
                : "of %d other ways to mark it, each is better where the marks would have to be better than the rest"
                        .formatted(differences.size());
    }

    private static String named(List<String> all) {
        int more = all.size() - MOST_NAMED;
        return more <= 0
                ? String.join(", ", all)
                : String.join(", ", all.subList(0, MOST_NAMED)) + " and %d more".formatted(more);
    }

    // Points that add up to one at most, and leave all rivals as much dearer as can be.
    private boolean isPossible(List<double[]> differences) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Expression sum = model.addExpression("sum").upper(1);
        for (int i = 0; i < table.size(); i++) {
            sum.set(model.addVariable("w" + i).lower(0), 1);
        }
        Variable room = model.addVariable("room").lower(0).upper(1).weight(1);
        for (int k = 0; k < differences.size(); k++) {
            Expression rival = model.addExpression("rival" + k).lower(0);
            for (int i = 0; i < table.size(); i++) {
                rival.set(model.getVariable(i), differences.get(k)[i]);
            }
            rival.set(room, -1);
        }
        Optimisation.Result result = model.maximise();
        return result.getState().isFeasible() && result.doubleValue(table.size()) > NOTHING;
    }
}
