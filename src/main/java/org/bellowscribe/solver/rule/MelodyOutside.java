package org.bellowscribe.solver.rule;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.PitchClass;

/**
 * Charges a bass of the fifth or a relative chord to whose harmony no melody note over it belongs. The bass of the fifth is
 * heard as a dominant with its seventh, so over G a pulled A or C has D below it, a pulled B or E has E (common practice,
 * no source).
 */
public final class MelodyOutside implements LeftHandRule {

    private static final String EACH = "each";
    private static final Set<LeftHandFit> HARMONIES =
            EnumSet.of(LeftHandFit.FIFTH, LeftHandFit.RELATIVE, LeftHandFit.RELATIVE_MINOR);
    private static final Set<Integer> DOMINANT_SEVENTH = Set.of(0, 4, 7, 10);
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
        boolean fits = event.pitches().stream()
                .anyMatch(pitch -> fit == LeftHandFit.FIFTH
                        ? DOMINANT_SEVENTH.contains(pitch.pitchClass().above(sound.root()))
                        : relative(play.harmony()).tones().contains(pitch.pitchClass()));
        return fits ? 0 : points.of(EACH);
    }

    private static ChordSymbol relative(ChordSymbol harmony) {
        PitchClass root = harmony.root();
        return harmony.isMinor()
                ? ChordSymbol.major(root.plus(MINOR_THIRD))
                : ChordSymbol.minor(root.plus(-MINOR_THIRD));
    }
}
