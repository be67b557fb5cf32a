package org.bellowscribe.difficulty;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/** What the hand at the basses and the air button has to do. */
final class LeftHand {

    private static final double HALF_SECOND = 0.5;
    private static final double MOST = 4;
    private static final double MINUTE = 60;
    /** Times that differ less are the same. */
    private static final double SAME = 1e-6;

    private final Playing playing;

    LeftHand(Playing playing) {
        this.playing = playing;
    }

    /** Strokes that fall between two notes, by the time to the nearer of them. */
    Figure between() {
        TreeSet<Double> struck = new TreeSet<>();
        playing.notes().forEach(note -> struck.add(note.seconds()));
        List<Moment> moments = new ArrayList<>();
        for (Playing.Played<WantedSound> stroke : playing.wanted()) {
            Double before = struck.floor(stroke.seconds() + SAME);
            Double after = struck.ceiling(stroke.seconds());
            double toBefore = before == null ? Double.POSITIVE_INFINITY : stroke.seconds() - before;
            double toAfter = after == null ? Double.POSITIVE_INFINITY : after - stroke.seconds();
            double nearest = Math.min(Math.abs(toBefore), toAfter);
            if (nearest > SAME && nearest < Double.POSITIVE_INFINITY) {
                moments.add(new Moment(
                        stroke.seconds(), Moment.bySpeed(nearest), stroke.what().event()));
            }
        }
        return Figure.aSecond(moments);
    }

    Figure twins() {
        Map<LeftHandSound, LeftHandButton> last = new HashMap<>();
        List<Moment> moments = new ArrayList<>();
        for (Playing.Played<Stroke> stroke : playing.strokes()) {
            LeftHandButton button = stroke.what().button();
            LeftHandButton before = last.put(stroke.what().sound(), button);
            if (before != null && !before.equals(button)) {
                moments.add(new Moment(stroke.seconds(), 1, stroke.what().event()));
            }
        }
        return Figure.aSecond(moments);
    }

    Figure air() {
        List<Moment> moments = new ArrayList<>();
        for (Playing.Played<Step> step : playing.steps()) {
            if (step.what().air() != AirUse.NONE) {
                double amount = Math.min(MOST, HALF_SECOND / step.length());
                moments.add(
                        new Moment(step.seconds(), amount, step.what().event().index()));
            }
        }
        return Figure.aSecond(moments).times(MINUTE);
    }
}
