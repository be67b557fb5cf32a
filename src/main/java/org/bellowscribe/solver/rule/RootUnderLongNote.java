package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/**
 * Charges another bass than the root, or silence, under a long melody note that is the root of the harmony: a home note
 * that rests must sound at home (common practice, no source).
 */
public final class RootUnderLongNote implements LeftHandRule {

    private static final double LONG_NOTE = 0.5;
    private static final String EACH = "each";

    @Override
    public String id() {
        return "root-under-long-note";
    }

    @Override
    public String summary() {
        return "A long melody note on the root of the harmony wants that root beneath it.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        boolean away = fit == LeftHandFit.FIFTH || fit == LeftHandFit.SILENT;
        if (!away || moment.seconds() < LONG_NOTE || !play.wanted().firstBeat()) {
            return 0;
        }
        boolean melodyOnRoot = moment.event().pitches().stream()
                .anyMatch(pitch -> pitch.pitchClass().equals(play.harmony().root()));
        return melodyOnRoot ? points.of(EACH) : 0;
    }
}
