package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.solver.Step;

/** The way the bellows go at every turn, for those who do not want to read it from the button line. */
public final class DirectionChanges implements Annotator {

    @Override
    public String id() {
        return "direction-changes";
    }

    @Override
    public String summary() {
        return "Push or pull above the first note and wherever the bellows turn.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        Reversals reversals = new Reversals(arrangement);
        List<Mark> marks = new ArrayList<>();
        for (Step step : arrangement.notes()) {
            if (marks.isEmpty() || reversals.isReversal(step)) {
                String word = arrangement.style().words().direction(step.direction());
                marks.add(new Mark.Words(step.event().index(), Topic.DIRECTION, word));
            }
        }
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return DirectionLegend.of(marks(arrangement), arrangement.style());
    }
}
