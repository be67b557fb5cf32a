package org.bellowscribe.annotation.mark;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Counting;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/** The count on which the air button is pressed, in words: for those who count aloud, in place of {@link Air}. */
public final class AirOnCount implements Annotator {

    @Override
    public String id() {
        return "air-on-count";
    }

    @Override
    public String summary() {
        return "Words such as press on 3 wherever the air button is pressed; in place of air.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        return AirPresses.marks(arrangement, step -> text(arrangement, step));
    }

    private static String text(Arrangement arrangement, Step step) {
        Counting counting = new Counting(
                arrangement.tune().measureOf(step.event()), arrangement.style().practice());
        String count = counting.at(step.event().onset());
        return count.isEmpty()
                ? arrangement.style().words().air(step.air())
                : arrangement.style().practice().air(step.air(), count);
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return arrangement.solution().steps().stream()
                .filter(step -> step.air() != AirUse.NONE && !step.event().isGap())
                .limit(1)
                .map(step -> new LegendEntry(text(arrangement, step), "press the air button on that count"))
                .toList();
    }
}
