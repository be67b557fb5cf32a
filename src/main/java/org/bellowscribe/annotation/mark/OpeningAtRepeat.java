package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.solver.Step;

/**
 * How far the bellows are open wherever a repeat or a jump comes back to: the same each time, so that a player can check
 * it while playing.
 */
public final class OpeningAtRepeat implements Annotator {

    @Override
    public String id() {
        return "opening-at-repeat";
    }

    @Override
    public String summary() {
        return "How far the bellows are open where a repeat or a jump comes back to, the same each time.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        List<Mark> marks = new ArrayList<>();
        for (int event : targets(arrangement.tune().eventOrder())) {
            Step step = arrangement.solution().steps().get(event);
            if (!step.event().isGap()) {
                marks.add(new Mark.Words(event, Topic.OPENING, OpeningText.before(step, arrangement)));
            }
        }
        return marks;
    }

    // Events that follow different ones at different times; the very first is the start, which has its own mark.
    private static Set<Integer> targets(List<Integer> order) {
        Map<Integer, Integer> before = new HashMap<>();
        Set<Integer> targets = new TreeSet<>();
        for (int i = 1; i < order.size(); i++) {
            Integer other = before.putIfAbsent(order.get(i), order.get(i - 1));
            boolean another = other != null && !other.equals(order.get(i - 1));
            if (another && order.get(i - 1) >= order.get(i)) {
                targets.add(order.get(i));
            }
        }
        return targets;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).stream()
                .map(mark -> ((Mark.Words) mark).text())
                .distinct()
                .map(text -> new LegendEntry(text, arrangement.style().legend().say(Meaning.OPENING_AGAIN)))
                .toList();
    }
}
