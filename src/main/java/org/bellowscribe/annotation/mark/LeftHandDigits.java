package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.MarkLines;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.lefthand.LeftHandFingers;

/** The fingers of the left hand, below its letters. */
public final class LeftHandDigits implements Annotator {

    @Override
    public String id() {
        return MarkLines.LEFT_HAND_FINGERS;
    }

    @Override
    public String summary() {
        return "The finger of every bass and chord below its letter, from 2 for the index finger to 5 for the little"
                + " finger; the thumb stays at the air button.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        LeftHandFingers fingers = LeftHandFingers.of(arrangement.tune(), arrangement.solution());
        List<Mark> marks = new ArrayList<>();
        for (LeftHandGroup group : LeftHandGroup.all(arrangement)) {
            String text =
                    group.text(arrangement, stroke -> String.valueOf(fingers.finger(stroke.step(), stroke.play())));
            if (!text.isEmpty() && !group.first().event().isRest()) {
                marks.add(new Mark.Syllable(group.first().event().index(), id(), text));
            }
        }
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).isEmpty()
                ? List.of()
                : List.of(
                        new LegendEntry("2 3 4 5", arrangement.style().legend().say(Meaning.LEFT_HAND_FINGERS)));
    }
}
