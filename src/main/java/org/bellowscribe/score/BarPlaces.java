package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.theory.Fraction;

/**
 * Finds where in its bar each written measure begins: pick-ups begin late, and so does the second half of a bar that is
 * cut by a repeat. Exporters rarely say so, therefore it is found by duration. Rules, the first that fits:
 *
 * <ul>
 *   <li>a measure that is not short begins at 0;
 *   <li>a short measure that fills what is missing in a measure played directly before it begins where that one ends;
 *   <li>a short first measure and a short measure at the start of a repeated section (but not of an ending) is a
 *       pick-up: it ends at the bar line;
 *   <li>any other short measure begins at 0.
 * </ul>
 */
public final class BarPlaces {

    private BarPlaces() {}

    /**
     * A written measure.
     *
     * @param length what is written in it
     * @param full a full measure of its time signature; equal to the length where the time is free
     * @param section true if a repeated section (not an ending) starts here or the one before it ends just before
     */
    public record Written(Fraction length, Fraction full, boolean section) {

        boolean isShort() {
            return length.compareTo(full) < 0;
        }
    }

    /**
     * Returns the time already gone in the bar at the start of each measure.
     *
     * @param measures the written measures
     * @param order order of play
     */
    public static List<Fraction> find(List<Written> measures, PlayOrder order) {
        List<List<Integer>> before = measuresBefore(measures.size(), order);
        List<Fraction> places = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            places.add(place(i, measures, before.get(i), places));
        }
        return places;
    }

    private static Fraction place(int index, List<Written> all, List<Integer> before, List<Fraction> places) {
        Written measure = all.get(index);
        if (!measure.isShort()) {
            return Fraction.ZERO;
        }
        for (int previous : before) {
            if (previous < index && all.get(previous).isShort()) {
                Fraction gone = places.get(previous).plus(all.get(previous).length());
                if (gone.plus(measure.length()).equals(measure.full())) {
                    return gone;
                }
            }
        }
        return index == 0 || measure.section() ? measure.full().minus(measure.length()) : Fraction.ZERO;
    }

    private static List<List<Integer>> measuresBefore(int count, PlayOrder order) {
        List<List<Integer>> before = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            before.add(new ArrayList<>());
        }
        List<Integer> measures = order.measures();
        for (int i = 1; i < measures.size(); i++) {
            before.get(measures.get(i)).add(measures.get(i - 1));
        }
        return before;
    }
}
