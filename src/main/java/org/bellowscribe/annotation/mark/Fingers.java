package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.solver.Step;

/** The finger at every note head: 1 is the index finger, 4 the little finger. */
public final class Fingers implements Annotator {

    @Override
    public String id() {
        return "fingers";
    }

    @Override
    public String summary() {
        return "The finger at every note, from 1 for the index finger to 4 for the little finger.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        List<Mark> marks = new ArrayList<>();
        for (Step step : arrangement.pressed()) {
            for (int note = 0; note < step.fingers().size(); note++) {
                marks.add(new Mark.Finger(
                        step.event().index(), note, step.fingers().get(note)));
            }
        }
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return arrangement.pressed().isEmpty()
                ? List.of()
                : List.of(
                        new LegendEntry("1 2 3 4", arrangement.style().legend().say(Meaning.FINGERS)));
    }
}
