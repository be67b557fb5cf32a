package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/**
 * The left hand, by letters, where it sounds. Lyrics of rests get lost in some programs, so what sounds in a rest is
 * added to the note before it if that note is in the same measure and the bellows do not turn, else written above.
 */
public final class LeftHand implements Annotator {

    @Override
    public String id() {
        return "left-hand";
    }

    @Override
    public String summary() {
        return "The left hand below the notes: a capital letter for a bass, a small one for a chord.";
    }

    @Override
    public boolean byDefault() {
        return true;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        Reversals reversals = new Reversals(arrangement);
        List<Mark> marks = new ArrayList<>();
        for (LeftHandGroup group : LeftHandGroup.all(arrangement)) {
            Step first = group.first();
            int event = first.event().index();
            String text = group.text(arrangement, stroke -> label(arrangement, stroke));
            if (text.isEmpty() || first.event().isGap()) {
                continue;
            }
            if (!first.event().isRest()) {
                marks.add(new Mark.Syllable(event, id(), text));
                continue;
            }
            boolean turns = reversals.isReversal(first);
            if (turns) {
                String word = arrangement.style().words().direction(first.direction());
                marks.add(new Mark.Words(event, Topic.DIRECTION, word));
            }
            marks.add(new Mark.Words(event, Topic.LEFT_HAND, above(arrangement, group, turns)));
        }
        return marks;
    }

    // Short enough for what stands there too.
    private static String above(Arrangement arrangement, LeftHandGroup group, boolean turns) {
        WordLabels labels = arrangement.style().words();
        Step first = group.first();
        String direction = labels.direction(first.direction());
        int taken = first.air() != AirUse.NONE
                ? (labels.directionAndAir(direction, labels.air(first.air())) + labels.between()).length()
                : turns ? (direction + labels.between()).length() : 0;
        int frame = labels.leftHand().with("sounds", "").length();
        String sounds = group.letters(arrangement, stroke -> label(arrangement, stroke))
                .shortened(Mark.Words.LONGEST - taken - frame);
        return labels.leftHand().with("sounds", sounds);
    }

    private static String label(Arrangement arrangement, Stroke stroke) {
        LeftHandLabels labels = arrangement.style().leftHand();
        boolean twin =
                stroke.step().direction() == BellowsDirection.PULL && stroke.isOnOtherButton(arrangement.instrument());
        return labels.label(stroke.sound()) + (twin ? labels.pulledTwin() : "");
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return LeftHandLegend.of(arrangement, marks(arrangement));
    }
}
