package org.bellowscribe.lefthand;

import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/**
 * The fingers of the left hand, one for each stroke of the sheet and so the same on every pass; decided after the solver,
 * which knows nothing of them, and least in points of their own.
 *
 * @param strokes all strokes in score order
 * @param fingers for each stroke a finger: 2 (index) to 5 (little); the thumb stays at the air button
 * @param points what they cost; every pair of strokes that follow each other counts once
 * @param least true if it is proved that no fingers cost less
 * @param columnJumps strokes on another column than the one before, in one playing with all repeats
 * @param sameFinger strokes on another button by the finger of the one before, in one playing
 * @param handMoves moves of the hand along the columns, in one playing
 * @param thumbPresses presses of the air button by the thumb, in one playing
 */
public record LeftHandFingers(
        List<Stroke> strokes,
        List<Integer> fingers,
        int points,
        boolean least,
        int columnJumps,
        int sameFinger,
        int handMoves,
        int thumbPresses) {

    /** Copies the lists. */
    public LeftHandFingers {
        strokes = List.copyOf(strokes);
        fingers = List.copyOf(fingers);
    }

    /** Finds the fingers of a tune that is solved. */
    public static LeftHandFingers of(Tune tune, Solution solution) {
        return new FingerSearch(tune, solution).find();
    }

    /**
     * Returns the finger of a stroke.
     *
     * @param step the step
     * @param play 0-based place among what the left hand does at it
     * @return 2 to 5; 0 if nothing is pressed there
     */
    public int finger(Step step, int play) {
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            if (stroke.event() == step.event().index() && stroke.play() == play) {
                return fingers.get(i);
            }
        }
        return 0;
    }
}
