package org.bellowscribe.lefthand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Finds the cheapest values of variables that cost points by themselves and in pairs: takes one variable after the other
 * out, always one with the fewest neighbors, and leaves behind what its neighbors must then pay. Exact (dynamic
 * programming without an order: U. Bertele and F. Brioschi, Nonserial Dynamic Programming, 1972, from memory) unless a
 * variable has too many neighbors, which no order of play of a real tune brings about; such a one gets the value that is
 * cheapest by itself.
 */
final class Elimination {

    private static final int MOST_NEIGHBORS = 6;

    /** Points that depend on some variables; the first variable of the scope counts most in the index. */
    private static final class Factor {
        private final int[] scope;
        private final int[] points;

        Factor(int[] scope, int[] points) {
            this.scope = scope;
            this.points = points;
        }
    }

    /** A variable that is out: its best value for every choice of its neighbors at that time. */
    private static final class Out {
        private final int variable;
        private final int[] scope;
        private final int[] best;

        Out(int variable, int[] scope, int[] best) {
            this.variable = variable;
            this.scope = scope;
            this.best = best;
        }
    }

    private final int values;
    private final List<List<Factor>> factors = new ArrayList<>();
    private final List<SortedSet<Integer>> neighbors = new ArrayList<>();
    private final List<Out> out = new ArrayList<>();
    private final int[] chosen;
    private boolean exact = true;

    /**
     * Creates variables that cost nothing.
     *
     * @param variables how many
     * @param values how many values each can have, counted from 0
     */
    Elimination(int variables, int values) {
        this.values = values;
        chosen = new int[variables];
        for (int i = 0; i < variables; i++) {
            factors.add(new ArrayList<>());
            neighbors.add(new TreeSet<>());
        }
    }

    /** Adds points of a variable by its value. */
    void alone(int variable, int[] points) {
        factors.get(variable).add(new Factor(new int[] {variable}, points.clone()));
    }

    /** Adds points of two different variables, by the value of the first, then of the other. */
    void pair(int first, int other, int[] points) {
        Factor factor = new Factor(new int[] {first, other}, points.clone());
        factors.get(first).add(factor);
        factors.get(other).add(factor);
        neighbors.get(first).add(other);
        neighbors.get(other).add(first);
    }

    /** Returns the cheapest value of every variable; of several the lowest of what is decided last. Call once. */
    int[] solve() {
        SortedSet<Integer> left = new TreeSet<>(
                Comparator.<Integer>comparingInt(v -> neighbors.get(v).size()).thenComparing(v -> v));
        for (int v = 0; v < chosen.length; v++) {
            left.add(v);
        }
        while (!left.isEmpty()) {
            int variable = left.first();
            SortedSet<Integer> around = new TreeSet<>(neighbors.get(variable));
            left.remove(variable);
            left.removeAll(around);
            take(variable, around);
            left.addAll(around);
        }
        for (int i = out.size() - 1; i >= 0; i--) {
            Out each = out.get(i);
            chosen[each.variable] = each.best[index(each.scope)];
        }
        return chosen.clone();
    }

    /** Returns true if no values cost less than those found. */
    boolean isExact() {
        return exact;
    }

    private void take(int variable, SortedSet<Integer> around) {
        List<Factor> mine = factors.get(variable);
        for (Factor factor : mine) {
            for (int other : factor.scope) {
                if (other != variable) {
                    factors.get(other).remove(factor);
                }
            }
        }
        for (int other : around) {
            neighbors.get(other).remove(variable);
        }
        if (around.size() > MOST_NEIGHBORS) {
            exact = false;
            fix(variable, mine);
        } else {
            join(variable, mine, around.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private void join(int variable, List<Factor> mine, int[] scope) {
        int size = power(scope.length);
        int[] points = new int[size];
        int[] best = new int[size];
        for (int i = 0; i < size; i++) {
            spread(scope, i);
            points[i] = Integer.MAX_VALUE;
            for (int value = 0; value < values; value++) {
                chosen[variable] = value;
                int sum = mine.stream().mapToInt(f -> f.points[index(f.scope)]).sum();
                if (sum < points[i]) {
                    points[i] = sum;
                    best[i] = value;
                }
            }
        }
        out.add(new Out(variable, scope, best));
        Factor left = new Factor(scope, points);
        for (int each : scope) {
            factors.get(each).add(left);
            for (int other : scope) {
                if (other != each) {
                    neighbors.get(each).add(other);
                }
            }
        }
    }

    /** Gives a variable the value with the least points if all others were free, and leaves its factors without it. */
    private void fix(int variable, List<Factor> mine) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int value = 0; value < values; value++) {
            int sum = 0;
            for (Factor factor : mine) {
                sum += Arrays.stream(without(factor, variable, value).points)
                        .min()
                        .orElse(0);
            }
            if (sum < least) {
                least = sum;
                best = value;
            }
        }
        out.add(new Out(variable, new int[0], new int[] {best}));
        for (Factor factor : mine) {
            Factor rest = without(factor, variable, best);
            for (int other : rest.scope) {
                factors.get(other).add(rest);
            }
        }
    }

    private Factor without(Factor factor, int variable, int value) {
        int[] scope = Arrays.stream(factor.scope).filter(v -> v != variable).toArray();
        int[] points = new int[power(scope.length)];
        for (int i = 0; i < points.length; i++) {
            spread(scope, i);
            chosen[variable] = value;
            points[i] = factor.points[index(factor.scope)];
        }
        return new Factor(scope, points);
    }

    private int power(int variables) {
        int size = 1;
        for (int i = 0; i < variables; i++) {
            size *= values;
        }
        return size;
    }

    private void spread(int[] scope, int index) {
        int rest = index;
        for (int i = scope.length - 1; i >= 0; i--) {
            chosen[scope[i]] = rest % values;
            rest /= values;
        }
    }

    private int index(int[] scope) {
        int index = 0;
        for (int variable : scope) {
            index = index * values + chosen[variable];
        }
        return index;
    }
}
