package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.annotation.Topic;

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
        for (int event : PlayNeighbors.of(arrangement.tune()).sectionStarts()) {
            String word = arrangement
                    .style()
                    .words()
                    .direction(arrangement.step(event).direction());
            marks.add(new Mark.Words(event, Topic.DIRECTION, word));
        }
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return DirectionLegend.of(marks(arrangement), arrangement.style().words());
    }
}
