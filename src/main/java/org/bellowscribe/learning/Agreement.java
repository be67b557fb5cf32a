package org.bellowscribe.learning;

import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/**
 * How far marks agree with what somebody marked, by what is compared. Only what was marked counts.
 *
 * @param buttons notes whose buttons were marked
 * @param directions events whose direction was marked
 * @param fingers notes whose fingers were marked
 * @param leftHand strokes of the left hand that were marked, silent ones too
 * @param air events whose use of air was marked, none too
 */
public record Agreement(Share buttons, Share directions, Share fingers, Share leftHand, Share air) {

    /** Nothing compared. */
    public static final Agreement NOTHING = new Agreement(Share.NONE, Share.NONE, Share.NONE, Share.NONE, Share.NONE);

    /**
     * So many of so many.
     *
     * @param same how many agree
     * @param of how many were compared
     */
    public record Share(int same, int of) {

        static final Share NONE = new Share(0, 0);

        static Share of(boolean same) {
            return new Share(same ? 1 : 0, 1);
        }

        Share plus(Share other) {
            return new Share(same + other.same, of + other.of);
        }

        /** Returns the share in percent; 100 where nothing was compared. */
        public double percent() {
            return of == 0 ? 100 : 100.0 * same / of;
        }
    }

    /** Compares marks with what was marked. */
    public static Agreement of(Pins marked, Solution solution) {
        Agreement sum = NOTHING;
        for (Pin pin : marked.list()) {
            sum = sum.plus(of(pin, solution.steps().get(pin.event())));
        }
        return sum;
    }

    /** Returns the measures, by 0-based index, in which marks are not as they were marked. */
    static SortedSet<Integer> measuresThatDiffer(Pins marked, Solution solution) {
        SortedSet<Integer> measures = new TreeSet<>();
        for (Pin pin : marked.list()) {
            Step step = solution.steps().get(pin.event());
            if (!of(pin, step).isWhole()) {
                measures.add(step.event().measure());
            }
        }
        return measures;
    }

    private static Agreement of(Pin pin, Step step) {
        Share buttons = Share.NONE;
        if (!pin.buttons().isEmpty()) {
            buttons = Share.of(pin.buttons().entrySet().stream()
                    .allMatch(each -> step.buttons().get(each.getKey()).id().equals(each.getValue())));
        }
        Share fingers = Share.NONE;
        if (!pin.fingers().isEmpty() || pin.handOn() != null) {
            boolean place = pin.handOn() == null || pin.handOn() == step.handOn();
            fingers = Share.of(place
                    && pin.fingers().entrySet().stream()
                            .allMatch(each -> step.fingers().get(each.getKey()).equals(each.getValue())));
        }
        return new Agreement(
                buttons,
                pin.direction() == null ? Share.NONE : Share.of(pin.direction() == step.direction()),
                fingers,
                leftHand(pin, step),
                pin.air() == null ? Share.NONE : Share.of(pin.air() == step.air()));
    }

    private static Share leftHand(Pin pin, Step step) {
        Share sum = Share.NONE;
        for (Map.Entry<Integer, String> each : pin.leftHand().entrySet()) {
            sum = sum.plus(Share.of(each.getKey() < step.leftHand().size()
                    && label(step.leftHand().get(each.getKey())).equals(each.getValue())));
        }
        return sum;
    }

    /** Returns the label of what the left hand plays, as pins have it. */
    static String label(LeftHandPlay play) {
        return play.sound() == null ? Pin.SILENCE : play.sound().label();
    }

    /** Returns both together. */
    public Agreement plus(Agreement other) {
        return new Agreement(
                buttons.plus(other.buttons),
                directions.plus(other.directions),
                fingers.plus(other.fingers),
                leftHand.plus(other.leftHand),
                air.plus(other.air));
    }

    /** Returns true if nothing differs. */
    boolean isWhole() {
        Share all = all();
        return all.same() == all.of();
    }

    /** Returns all aspects together. */
    Share all() {
        return buttons.plus(directions).plus(fingers).plus(leftHand).plus(air);
    }
}
