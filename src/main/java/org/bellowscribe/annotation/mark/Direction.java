package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Step;

/** The way the bellows go where a player sets out: at the first note of every section. */
public final class Direction implements Annotator {

    @Override
    public String id() {
        return "direction";
    }

    @Override
    public String summary() {
        return "Push or pull above the first note of every section.";
    }

    @Override
    public boolean byDefault() {
        return true;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        List<Mark> marks = new ArrayList<>();
        Step before = null;
        for (int event : PlayNeighbors.of(arrangement.tune()).sectionStarts()) {
            Step step = arrangement.step(event);
            if (before == null || !isOneStart(arrangement.tune(), before, step)) {
                String word = arrangement.style().words().direction(step.direction());
                marks.add(new Mark.Words(event, Topic.DIRECTION, word));
            }
            before = step;
        }
        return marks;
    }

    /** A pick-up and the section that it leads into in the same direction say it once: their words would collide. */
    private static boolean isOneStart(Tune tune, Step pickUp, Step section) {
        return tune.measureOf(pickUp.event()).beatOffset().isPositive()
                && pickUp.event().measure() + 1 == section.event().measure()
                && pickUp.direction() == section.direction();
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return DirectionLegend.of(marks(arrangement), arrangement.style());
    }
}
