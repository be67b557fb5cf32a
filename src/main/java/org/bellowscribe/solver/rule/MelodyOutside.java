package org.bellowscribe.solver.rule;

import java.util.List;
import java.util.Set;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.theory.PitchClass;

/**
 * Charges a bass of the fifth or a relative minor to whose harmony no melody note over it belongs. The bass of the fifth is
 * heard as a dominant with its seventh, so over G a pulled A or C has D below it, a pulled B or E has E (common practice,
 * no source).
 */
public final class MelodyOutside implements LeftHandRule {

    private static final String EACH = "each";
    private static final Set<LeftHandFit> HARMONIES = Set.of(LeftHandFit.FIFTH, LeftHandFit.RELATIVE_MINOR);
    private static final Set<Integer> DOMINANT_SEVENTH = Set.of(0, 4, 7, 10);
    private static final Set<Integer> MINOR_TRIAD = Set.of(0, 3, 7);
    private static final int MINOR_THIRD = 3;

    @Override
    public String id() {
        return "melody-outside";
    }

    @Override
    public String summary() {
        return "A stand-in of the left hand to whose harmony the melody note over it does not belong.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        LeftHandSound sound = play.sound();
        Event event = moment.event();
        if (sound == null || event.isRest() || !HARMONIES.contains(fit)) {
            return 0;
        }
        PitchClass root =
                fit == LeftHandFit.FIFTH ? sound.root() : play.harmony().root().plus(-MINOR_THIRD);
        Set<Integer> chord = fit == LeftHandFit.FIFTH ? DOMINANT_SEVENTH : MINOR_TRIAD;
        boolean fits = event.pitches().stream()
                .anyMatch(pitch -> chord.contains(pitch.pitchClass().above(root)));
        return fits ? 0 : points.of(EACH);
    }
}
