package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All rivals found so far, by place. A rival is violated by so much as what somebody marked costs more than it, and its
 * margin; a place is violated as its most violated rival is.
 */
final class Planes {

    private final Table table;
    private final SortedMap<Place, List<Rival>> rivals = new TreeMap<>();
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

    /**
     * Returns what is known of some of the tunes.
     *
     * @param kept their places among those marked, in order; from now on they are numbered from 0
     */
    Planes of(List<Integer> kept) {
        Planes some = new Planes(table, kept.size());
        for (int i = 0; i < kept.size(); i++) {
            some.meant[i] = meant[kept.get(i)];
        }
        for (Map.Entry<Place, List<Rival>> each : rivals.entrySet()) {
            int index = kept.indexOf(each.getKey().tune());
            if (index >= 0) {
                Place place = new Place(index, each.getKey().measure());
                some.rivals.put(
                        place,
                        new ArrayList<>(each.getValue().stream()
                                .map(rival -> new Rival(place, rival.margin(), rival.counts()))
                                .toList()));
            }
        }
        return some;
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

    /**
     * A rival as the quadratic program sees it.
     *
     * @param difference for each case how much more often the rival meets it than what was marked
     * @param margin by so many points it should be dearer
     */
    record Plane(double[] difference, int margin) {}

    /** Returns for each place its rivals as planes; not for those where no points can help. */
    List<List<Plane>> byPlace() {
        List<List<Plane>> all = new ArrayList<>();
        for (Map.Entry<Place, List<Rival>> each : rivals.entrySet()) {
            if (!isHopeless(each.getKey())) {
                all.add(each.getValue().stream()
                        .map(rival -> new Plane(difference(rival), rival.margin()))
                        .toList());
            }
        }
        return all;
    }

    // Marks that some rival is no worse than by any case would only draw all points towards nothing.
    private boolean isHopeless(Place place) {
        return at(place).stream()
                .anyMatch(rival -> Arrays.stream(difference(rival)).noneMatch(more -> more > 0));
    }

    /** Tells whether what was marked at a place is cheaper than every rival. */
    boolean isMet(Place place, int[] points) {
        return at(place).stream().allMatch(rival -> violation(rival, points) < rival.margin());
    }

    /** Returns by how many points a rival is violated; below 0 if there is room. */
    double violation(Rival rival, int[] points) {
        double[] difference = difference(rival);
        double sum = rival.margin();
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

    /** Returns the sum of the violations of all places where points can help. */
    double violation(int[] points) {
        double sum = 0;
        for (Place place : rivals.keySet()) {
            sum += isHopeless(place) ? 0 : violation(place, points);
        }
        return sum;
    }
}
