package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.OpeningRule;
import org.bellowscribe.solver.Points;

/**
 * Charges bellows that drift away from the middle, by time: near an end the tone is hard to steady, arms tire, and the next
 * surprise has nowhere to go. Players count a surplus in one direction and give it back early (common practice, no source;
 * the band as well).
 */
public final class BellowsDrift implements OpeningRule {

    private static final int NEAR_THE_END = 10;
    private static final int MIDDLE_FROM = 25;
    private static final String SECOND_OFF_THE_MIDDLE = "second-off-the-middle";
    private static final String SECOND = "second";
    private static final String SECOND_NEAR_THE_END = "second-near-the-end";

    @Override
    public String id() {
        return "bellows-drift";
    }

    @Override
    public String summary() {
        return "Bellows less than a fifth open, or more than four fifths, cost by time, more within a tenth of an end, less within a quarter.";
    }

    @Override
    public List<String> cases() {
        return List.of(SECOND_OFF_THE_MIDDLE, SECOND, SECOND_NEAR_THE_END);
    }

    @Override
    public int points(Moment moment, int percent, Points points) {
        int fromTheEnd = Math.min(percent, 100 - percent);
        return fromTheEnd >= MIDDLE_FROM ? 0 : of(moment, points.of(band(fromTheEnd)));
    }

    private static String band(int fromTheEnd) {
        return fromTheEnd < NEAR_THE_END
                ? SECOND_NEAR_THE_END
                : fromTheEnd < COMFORTABLE_FROM ? SECOND : SECOND_OFF_THE_MIDDLE;
    }

    // Whole points, rounded at the beats of the measure: many short notes together cost what their time does.
    private static int of(Moment moment, int perSecond) {
        Event event = moment.event();
        double before =
                moment.seconds() * event.onset().toDouble() / event.duration().toDouble();
        return (int) (Math.round(perSecond * (before + moment.seconds())) - Math.round(perSecond * before));
    }
}
