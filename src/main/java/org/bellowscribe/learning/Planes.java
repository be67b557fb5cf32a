package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All rivals found so far, by place. A rival is violated by so much as what somebody marked costs more than it, and one
 * point; a place is violated as its most violated rival is.
 */
final class Planes {

    /** By so many points what was marked should be cheaper than any rival. */
    static final int MARGIN = 1;

    private final Table table;
    private final SortedMap<Place, List<Rival>> rivals = new TreeMap<>(
            (a, b) -> a.tune() == b.tune() ? Integer.compare(a.measure(), b.measure()) : Integer.compare(a.tune(), b.tune()));
    private final double[][] meant;

    /**
     * Starts with none.
     *
     * @param table the cases
     * @param tunes how many tunes there are
     */
    Planes(Table table, int tunes) {
        this.table = table;
        meant = new double[tunes][];
    }

    /** Takes in what became of a tune; true if the marks that keep what was marked are others than before. */
    boolean add(int tune, Marking.Found found) {
        boolean changed = meant[tune] != null && !Arrays.equals(meant[tune], found.meant());
        meant[tune] = found.meant();
        for (Rival rival : found.rivals()) {
            List<Rival> there = rivals.computeIfAbsent(rival.place(), place -> new ArrayList<>());
            if (there.stream().noneMatch(known -> Arrays.equals(known.counts(), rival.counts()))) {
                there.add(rival);
            }
        }
        return changed;
    }

    /** Returns the places with rivals. */
    List<Place> places() {
        return List.copyOf(rivals.keySet());
    }

    /** Returns the rivals of a place. */
    List<Rival> at(Place place) {
        return List.copyOf(rivals.getOrDefault(place, List.of()));
    }

    /** Returns for each case how much more often a rival meets it than what was marked. */
    double[] difference(Rival rival) {
        double[] less = meant[rival.place().tune()];
        double[] difference = new double[table.size()];
        for (int i = 0; i < difference.length; i++) {
            difference[i] = rival.counts()[i] - less[i];
        }
        return difference;
    }

    /** Returns for each place the differences of its rivals. */
    List<List<double[]>> differences() {
        List<List<double[]>> all = new ArrayList<>();
        for (Map.Entry<Place, List<Rival>> each : rivals.entrySet()) {
            all.add(each.getValue().stream().map(this::difference).toList());
        }
        return all;
    }

    /** Returns by how many points a rival is violated; below 0 if there is room. */
    double violation(Rival rival, int[] points) {
        double[] difference = difference(rival);
        double sum = MARGIN;
        for (int i = 0; i < points.length; i++) {
            sum -= difference[i] * points[i];
        }
        return sum;
    }

    /** Returns by how many points a place is violated, 0 or more. */
    double violation(Place place, int[] points) {
        double most = 0;
        for (Rival rival : at(place)) {
            most = Math.max(most, violation(rival, points));
        }
        return most;
    }

    /** Returns the sum of the violations of all places. */
    double violation(int[] points) {
        double sum = 0;
        for (Place place : rivals.keySet()) {
            sum += violation(place, points);
        }
        return sum;
    }
}
