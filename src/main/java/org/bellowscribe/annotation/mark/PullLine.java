package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Step;

/**
 * A bracket over the notes that are pulled, for those who see the bellows better than they read signs. MuseScore and Verovio
 * show brackets; LilyPond 2.24, OSMD and alphaTab leave them out.
 */
public final class PullLine implements Annotator {

    @Override
    public String id() {
        return "pull-line";
    }

    @Override
    public String summary() {
        return "A bracket over the notes that are pulled; some programs leave brackets out.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        SortedSet<Integer> starts = PlayNeighbors.of(arrangement.tune()).sectionStarts();
        List<Mark> marks = new ArrayList<>();
        int from = -1;
        int last = -1;
        for (Step step : arrangement.notes()) {
            int event = step.event().index();
            boolean pulled = step.direction() == BellowsDirection.PULL;
            if (from >= 0 && (!pulled || starts.contains(event))) {
                marks.add(new Mark.Bracket(from, last));
                from = -1;
            }
            from = pulled && from < 0 ? event : from;
            last = event;
        }
        if (from >= 0) {
            marks.add(new Mark.Bracket(from, last));
        }
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).isEmpty()
                ? List.of()
                : List.of(new LegendEntry("a bracket", "these notes are pulled"));
    }
}
