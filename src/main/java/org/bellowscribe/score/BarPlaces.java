package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * Finds where in its bar each written measure begins: pick-ups begin late, and so does the second half of a bar that is
 * cut by a repeat. Exporters rarely say so, therefore it is found by duration. Rules, the first that fits:
 *
 * <ul>
 *   <li>a measure that is not short begins at 0;
 *   <li>a short measure that fills what is missing in a measure played directly before it begins where that one ends;
 *   <li>a short first measure and a short measure at the start of a section (but not of an ending) is a pick-up:
 *       it ends at the bar line;
 *   <li>any other short measure begins at 0.
 * </ul>
 *
 * <p>Measures without length are passed over: what they say about a repeated section holds for the next.
 */
public final class BarPlaces {

    private BarPlaces() {}

    /**
     * A written measure.
     *
     * @param length what is written in it
     * @param full a full measure of its time signature; equal to the length where the time is free
     * @param section true if a section of the tune (not an ending) starts here: at a repeat sign or a double bar line
     */
    public record Written(Fraction length, Fraction full, boolean section) {

        boolean isShort() {
            return length.isPositive() && length.compareTo(full) < 0;
        }
    }

    /**
     * Returns the time already gone in the bar at the start of each measure.
     *
     * @param measures the written measures
     * @param order order of play
     */
    public static List<Fraction> find(List<Written> measures, PlayOrder order) {
        List<List<Integer>> before = measuresBefore(measures, order);
        List<Fraction> places = new ArrayList<>();
        boolean section = true;
        for (int i = 0; i < measures.size(); i++) {
            Written measure = measures.get(i);
            section |= measure.section();
            if (measure.isShort()) {
                Fraction gone = gone(measure, before.get(i), measures, places);
                Fraction start = section ? measure.full().minus(measure.length()) : Fraction.ZERO;
                places.add(gone == null ? start : gone);
            } else {
                places.add(Fraction.ZERO);
            }
            section &= !measure.length().isPositive();
        }
        return places;
    }

    // Where a short measure before it ends, if it fills what that one lacks.
    private static @Nullable Fraction gone(
            Written measure, List<Integer> before, List<Written> all, List<Fraction> places) {
        for (int previous : before) {
            if (previous < places.size() && all.get(previous).isShort()) {
                Fraction gone = places.get(previous).plus(all.get(previous).length());
                if (gone.plus(measure.length()).equals(measure.full())) {
                    return gone;
                }
            }
        }
        return null;
    }

    /** Returns for each measure those that are played directly before it, in the order of playing. */
    private static List<List<Integer>> measuresBefore(List<Written> written, PlayOrder order) {
        List<List<Integer>> before = new ArrayList<>();
        written.forEach(each -> before.add(new ArrayList<>()));
        int last = -1;
        for (int measure : order.measures()) {
            if (written.get(measure).length().isPositive()) {
                if (last >= 0) {
                    before.get(measure).add(last);
                }
                last = measure;
            }
        }
        return before;
    }
}
