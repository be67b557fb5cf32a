package org.bellowscribe.annotation.mark;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Step;

/** The way the bellows go at every note, for sheets without buttons: the style's signs around its filler. */
public final class DirectionLine implements Annotator {

    @Override
    public String id() {
        return "direction-line";
    }

    @Override
    public String summary() {
        return "A sign for push or pull below every note; for sheets without buttons, whose signs tell it.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        return arrangement.notes().stream()
                .<Mark>map(step -> new Mark.Syllable(step.event().index(), id(), sign(arrangement.style(), step)))
                .toList();
    }

    private static String sign(Style style, Step step) {
        return sign(style, step.direction());
    }

    private static String sign(Style style, BellowsDirection direction) {
        String around = style.buttons().direction(direction).with("buttons", style.filler());
        // A style that tells the direction by the line has no signs of its own.
        return style.buttons().twoLines() ? style.words().direction(direction) : around;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return arrangement.notes().isEmpty()
                ? List.of()
                : List.of(
                        new LegendEntry(sign(arrangement.style(), BellowsDirection.PUSH), "pushed"),
                        new LegendEntry(sign(arrangement.style(), BellowsDirection.PULL), "pulled"));
    }
}
