package org.bellowscribe.learning;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.RuleCase;

/** The cases of all rules in a fixed order, with the points of the manner that learning starts from. */
final class Table {

    /** The most points that a manner file may give to a case. */
    static final int MOST = 1000;

    // A case of many points moves more easily than one of few: by a quarter of its points as easily as by one point.
    private static final double PART = 4;

    private final Manner base;
    private final List<RuleCase> cases = RuleCase.all();
    private final int[] points;
    private final boolean[] held;

    /**
     * Makes the table of a manner.
     *
     * @param base the manner to start from
     * @param heldRules ids of the rules whose points must stay
     */
    Table(Manner base, Set<String> heldRules) {
        this.base = base;
        points = new int[cases.size()];
        held = new boolean[points.length];
        for (int i = 0; i < points.length; i++) {
            RuleCase at = cases.get(i);
            points[i] = base.byRule().getOrDefault(at.rule(), Points.NONE).of(at.name());
            held[i] = heldRules.contains(at.rule());
        }
    }

    int size() {
        return points.length;
    }

    RuleCase at(int index) {
        return cases.get(index);
    }

    /** Returns the points to start from. */
    int[] points() {
        return points.clone();
    }

    boolean isHeld(int index) {
        return held[index];
    }

    /** Returns how many points of change count as one. */
    double scale(int index) {
        return 1 + points[index] / PART;
    }

    /** Returns how much points differ from those to start from: half the sum of the squares, each in its scale. */
    double change(int[] other) {
        double sum = 0;
        for (int i = 0; i < points.length; i++) {
            double part = (other[i] - points[i]) / scale(i);
            sum += part * part / 2;
        }
        return sum;
    }

    /** Returns counts in the order of the cases. */
    double[] row(SortedMap<RuleCase, Double> counts) {
        return cases.stream()
                .mapToDouble(each -> counts.getOrDefault(each, 0.0))
                .toArray();
    }

    /** Returns the manner with other points; those that it does not mention and that are 0 stay unmentioned. */
    Manner manner(int[] other) {
        SortedMap<String, Points> byRule = new TreeMap<>(base.byRule());
        for (int i = 0; i < points.length; i++) {
            if (other[i] != points[i]) {
                RuleCase at = cases.get(i);
                Map<String, Integer> byCase = new TreeMap<>(
                        byRule.getOrDefault(at.rule(), Points.NONE).byCase());
                byCase.put(at.name(), other[i]);
                byRule.put(at.rule(), new Points(byCase));
            }
        }
        return new Manner(
                base.id(), base.summary(), base.remarks(), Collections.unmodifiableMap(byRule), base.patterns());
    }
}
