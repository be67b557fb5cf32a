package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/** Words where the air button is pressed, and which way the bellows go if they turn there or no note tells. */
final class AirPresses {

    private AirPresses() {}

    /**
     * Returns the words.
     *
     * @param text what is written at a note or rest; between two notes the style has words of its own
     */
    static List<Mark> marks(Arrangement arrangement, Function<Step, String> text) {
        WordLabels words = arrangement.style().words();
        Reversals reversals = new Reversals(arrangement);
        List<Mark> marks = new ArrayList<>();
        for (Step step : arrangement.solution().steps()) {
            int event = step.event().index();
            if (step.air() == AirUse.NONE) {
                continue;
            }
            if (step.event().isGap()) {
                marks.add(new Mark.Words(event, Topic.AIR, words.airBefore()));
                continue;
            }
            if (step.event().isRest() || reversals.isReversal(step)) {
                marks.add(new Mark.Words(event, Topic.DIRECTION, words.direction(step.direction())));
            }
            marks.add(new Mark.Words(event, Topic.AIR, text.apply(step)));
        }
        return marks;
    }
}
