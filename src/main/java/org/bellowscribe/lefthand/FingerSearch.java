package org.bellowscribe.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Solution;

/** Finds the fingers of the left hand that cost the fewest points, and counts what is hard about them. */
final class FingerSearch {

    private static final int FINGERS = FingerPoints.LITTLE - FingerPoints.INDEX + 1;

    private final Tune tune;
    private final Solution solution;
    private final List<Stroke> strokes;
    private final List<Handover> handovers;
    private final List<Integer> fingers = new ArrayList<>();

    FingerSearch(Tune tune, Solution solution) {
        this.tune = tune;
        this.solution = solution;
        strokes = Stroke.of(solution);
        handovers = Handover.all(tune, strokes);
    }

    /** Returns the fingers. Call once. */
    LeftHandFingers find() {
        Elimination elimination = new Elimination(strokes.size(), FINGERS);
        for (int i = 0; i < strokes.size(); i++) {
            elimination.alone(i, alone(strokes.get(i)));
        }
        for (Handover handover : handovers) {
            if (handover.from() != handover.to()) {
                elimination.pair(handover.from(), handover.to(), pair(handover));
            }
        }
        for (int value : elimination.solve()) {
            fingers.add(FingerPoints.INDEX + value);
        }
        return new LeftHandFingers(
                strokes,
                fingers,
                points(),
                elimination.isExact(),
                count(this::isOnOtherColumn),
                count(this::isSameFinger),
                count(this::isHandMove),
                thumbPresses());
    }

    private static int[] alone(Stroke stroke) {
        int[] points = new int[FINGERS];
        for (int i = 0; i < FINGERS; i++) {
            points[i] = FingerPoints.of(stroke.button(), FingerPoints.INDEX + i);
        }
        return points;
    }

    private int[] pair(Handover handover) {
        int[] points = new int[FINGERS * FINGERS];
        for (int i = 0; i < points.length; i++) {
            points[i] = points(handover, FingerPoints.INDEX + i / FINGERS, FingerPoints.INDEX + i % FINGERS);
        }
        return points;
    }

    private int points(Handover handover, int from, int to) {
        return FingerPoints.of(strokes.get(handover.from()), from, strokes.get(handover.to()), to, handover.seconds());
    }

    private int points() {
        int points = 0;
        for (int i = 0; i < strokes.size(); i++) {
            points += FingerPoints.of(strokes.get(i).button(), fingers.get(i));
        }
        for (Handover handover : handovers) {
            points += points(handover, fingers.get(handover.from()), fingers.get(handover.to()));
        }
        return points;
    }

    private int count(Predicate<Handover> sort) {
        return handovers.stream().filter(sort).mapToInt(Handover::times).sum();
    }

    private boolean isOnOtherColumn(Handover handover) {
        return strokes.get(handover.from()).button().column()
                != strokes.get(handover.to()).button().column();
    }

    private boolean isSameFinger(Handover handover) {
        boolean same = strokes.get(handover.from())
                .button()
                .id()
                .equals(strokes.get(handover.to()).button().id());
        return !same && fingers.get(handover.from()).equals(fingers.get(handover.to()));
    }

    private boolean isHandMove(Handover handover) {
        return handOn(handover.from()) != handOn(handover.to());
    }

    private int handOn(int stroke) {
        return FingerPoints.handOn(strokes.get(stroke).button(), fingers.get(stroke));
    }

    private int thumbPresses() {
        return (int) tune.eventOrder().stream()
                .filter(event -> solution.steps().get(event).air() != AirUse.NONE)
                .count();
    }
}
