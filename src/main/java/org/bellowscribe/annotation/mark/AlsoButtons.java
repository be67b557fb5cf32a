package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.instrument.OtherBox;
import org.bellowscribe.solver.Step;

/** The numbers that the buttons have on other boxes, which are played with the same fingers; a line for each box. */
public final class AlsoButtons implements Annotator {

    @Override
    public String id() {
        return "also-buttons";
    }

    @Override
    public String summary() {
        return "The numbers of the buttons on the boxes of --also-for, in a line for each.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        ButtonLabels labels = arrangement.style().buttons();
        List<OtherBox> others = arrangement.instrument().alsoFor();
        List<Mark> marks = new ArrayList<>();
        if (labels.fingers() || others.isEmpty() || arrangement.pressed().isEmpty()) {
            return marks;
        }
        int line = 1;
        for (OtherBox other : others) {
            NumberLines lines = new NumberLines(arrangement, new ButtonText(arrangement, other::numbered));
            String name = "also-" + other.other().id();
            line += lines.count();
            marks.add(legend(arrangement, other, line));
            marks.addAll(lines.marks(name, name + "-"));
        }
        return marks;
    }

    private static Mark legend(Arrangement arrangement, OtherBox other, int line) {
        Step first = arrangement.pressed().get(0);
        String text = arrangement.style().practice().alsoFor(line, other.other().id());
        return new Mark.Words(first.event().index(), Topic.ALSO_FOR, text);
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).stream()
                .filter(mark -> mark instanceof Mark.Words)
                .map(mark -> new LegendEntry(
                        ((Mark.Words) mark).text(), "this line of numbers is for that box, with the same fingers"))
                .toList();
    }
}
