package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Step;

/**
 * The way the bellows go as signs of the standard music font layout: U+E8CB accdnPush and U+E8CC accdnPull (SMuFL 1.4,
 * "Accordion"; it has no sign for the air button). No program that was tried draws them, nor is any disturbed.
 */
public final class BellowsSigns implements Annotator {

    @Override
    public String id() {
        return "bellows-signs";
    }

    @Override
    public String summary() {
        return "Push or pull at every turn as a sign of the music font (SMuFL), for programs that will draw it.";
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
            if (!step.event().isGap() && (marks.isEmpty() || reversals.isReversal(step))) {
                boolean push = step.direction() == BellowsDirection.PUSH;
                marks.add(new Mark.Sign(step.event().index(), push ? "accdnPush" : "accdnPull"));
            }
        }
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return List.of();
    }
}
