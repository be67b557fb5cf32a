package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/**
 * A note, or a rest that begins a measure or a stroke of the bellows, with the rests after it. Lyrics of rests get lost
 * in some programs, so what the left hand does in a rest is told with the note before it if that note is in the same
 * measure and the bellows do not turn.
 *
 * @param steps the steps, one at least; all but the first are rests
 * @param strokes what the left hand presses during them, in order of time
 */
record LeftHandGroup(List<Step> steps, List<Stroke> strokes) {

    /** Returns all groups in score order. */
    static List<LeftHandGroup> all(Arrangement arrangement) {
        List<LeftHandGroup> groups = new ArrayList<>();
        for (Step step : arrangement.solution().steps()) {
            if (groups.isEmpty() || !groups.get(groups.size() - 1).goesOnWith(step)) {
                groups.add(new LeftHandGroup(new ArrayList<>(), new ArrayList<>()));
            }
            groups.get(groups.size() - 1).steps.add(step);
        }
        List<LeftHandGroup> byEvent = new ArrayList<>();
        groups.forEach(group -> group.steps.forEach(step -> byEvent.add(group)));
        Stroke.of(arrangement.solution())
                .forEach(stroke -> byEvent.get(stroke.event()).strokes.add(stroke));
        return groups;
    }

    private boolean goesOnWith(Step step) {
        Step first = first();
        return step.event().isRest()
                && step.event().measure() == first.event().measure()
                && step.direction() == first.direction();
    }

    /** Returns the step that carries the text. */
    Step first() {
        return steps.get(0);
    }

    /** Returns the labels of all strokes as one text; empty if there are none. */
    String text(Arrangement arrangement, Function<Stroke, String> label) {
        return letters(arrangement, label).toString();
    }

    /** Returns the labels of all strokes as one text that can be cut. */
    LeftHandText letters(Arrangement arrangement, Function<Stroke, String> label) {
        LeftHandText text = new LeftHandText(arrangement.style().leftHand(), label);
        Fraction start = first().event().onset();
        for (Stroke stroke : strokes) {
            text.add(stroke.step().event().onset().minus(start).plus(stroke.offset()), stroke);
        }
        return text;
    }
}
