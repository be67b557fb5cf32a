package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The points that change least and leave the least violated, as real numbers: the least of the change (see {@link
 * Table#change}) and the price times the sum of the places' violations. That sum is approached from below by planes of its
 * own, each the sum of one rival a place, until nothing is missed (one slack for all places: Joachims, Finley and Yu 2009).
 */
final class PointsProgram {

    private static final int MOST_ROUNDS = 24;
    // Cuts that lie deepest are dropped first; what they knew is found again where it matters.
    private static final int MOST_CUTS = 80;
    // Of the objective; points are rounded afterwards.
    private static final double NEAR = 0.005;

    /** A plane: the sum of the violations is at least {@code constant - slope points}. */
    private record Cut(double[] slope, double constant) {}

    private final Table table;
    private final double price;
    private List<List<Planes.Plane>> places = List.of();
    private final List<Cut> cuts = new ArrayList<>();
    private double[] points;

    /**
     * Begins with no places.
     *
     * @param table the cases with the points to start from
     * @param price what a point of violation costs
     */
    PointsProgram(Table table, double price) {
        this.table = table;
        this.price = price;
        points = start();
    }

    /**
     * Returns the best points in the order of the table, within one part in two hundred of the objective. What is known of
     * an earlier call is used further.
     *
     * @param known planes by place; those of an earlier call and more
     */
    double[] solve(List<List<Planes.Plane>> known) {
        places = known;
        if (places.isEmpty()) {
            return points;
        }
        double reached = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Cut cut = cut(points);
            double missed = violation(cut, points) - reached;
            if (round > 0 && price * missed <= NEAR * (change() + price * reached)) {
                break;
            }
            cuts.add(cut);
            if (cuts.size() > MOST_CUTS) {
                double[] at = points;
                cuts.sort(Comparator.comparingDouble(each -> -violation(each, at)));
                cuts.remove(cuts.size() - 1);
            }
            points = best();
            reached = 0;
            for (Cut each : cuts) {
                reached = Math.max(reached, violation(each, points));
            }
        }
        return points;
    }

    /** Forgets what is known of earlier calls. */
    void restart() {
        cuts.clear();
    }

    private double change() {
        double sum = 0;
        int[] base = table.points();
        for (int i = 0; i < points.length; i++) {
            double part = (points[i] - base[i]) / table.scale(i);
            sum += part * part / 2;
        }
        return sum;
    }

    private boolean isFree(int index) {
        return !table.isHeld(index) && cuts.stream().anyMatch(cut -> cut.slope()[index] != 0);
    }

    private double[] start() {
        int[] base = table.points();
        double[] values = new double[base.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = base[i];
        }
        return values;
    }

    // The sum of the most violated rivals.
    private Cut cut(double[] at) {
        double[] slope = new double[at.length];
        double constant = 0;
        for (List<Planes.Plane> rivals : places) {
            Planes.Plane worst = null;
            double most = 0;
            for (Planes.Plane plane : rivals) {
                double violation = plane.margin() - product(plane.difference(), at);
                if (violation > most) {
                    most = violation;
                    worst = plane;
                }
            }
            if (worst != null) {
                constant += worst.margin();
                for (int i = 0; i < slope.length; i++) {
                    slope[i] += worst.difference()[i];
                }
            }
        }
        return new Cut(slope, constant);
    }

    private static double violation(Cut cut, double[] at) {
        return cut.constant() - product(cut.slope(), at);
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    // In changes counted in their scales, and violations a place, so that all numbers are of one size.
    private double[] best() {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        int[] base = table.points();
        List<Integer> free = new ArrayList<>();
        Expression change = model.addExpression("change").weight(1);
        for (int i = 0; i < base.length; i++) {
            if (!isFree(i)) {
                continue;
            }
            free.add(i);
            Variable variable = model.addVariable("z" + i)
                    .lower(-base[i] / table.scale(i))
                    .upper((Table.MOST - base[i]) / table.scale(i));
            change.set(variable, variable, 0.5);
        }
        Variable slack = model.addVariable("slack").lower(0).weight(price * places.size());
        for (int k = 0; k < cuts.size(); k++) {
            addCut(model, cuts.get(k), free, slack);
        }
        Optimisation.Result result = model.minimise();
        double[] values = start();
        for (int v = 0; v < free.size(); v++) {
            int i = free.get(v);
            double value = base[i] + table.scale(i) * result.doubleValue(v);
            values[i] = Math.max(0, Math.min(Table.MOST, value));
        }
        return values;
    }

    private void addCut(ExpressionsBasedModel model, Cut cut, List<Integer> free, Variable slack) {
        double start = violation(cut, start());
        Expression expression =
                model.addExpression("cut" + model.countExpressions()).lower(start / places.size());
        for (int v = 0; v < free.size(); v++) {
            int i = free.get(v);
            expression.set(model.getVariable(v), cut.slope()[i] * table.scale(i) / places.size());
        }
        expression.set(slack, 1);
    }
}
