package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * Charges a stand-in that has a note a semitone beside the melody note over it: the third of the wrong chord is heard
 * most (common practice, no source). The sound that the harmony asks for is never charged.
 */
public final class MelodyClash implements LeftHandRule {

    private static final String BASS = "bass";
    private static final String CHORD = "chord";
    private static final int FIFTH = 7;

    @Override
    public String id() {
        return "melody-clash";
    }

    @Override
    public String summary() {
        return "A stand-in of the left hand that rubs against the melody note over it.";
    }

    @Override
    public List<String> cases() {
        return List.of(BASS, CHORD);
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        LeftHandSound sound = play.sound();
        if (sound == null || fit == LeftHandFit.EXACT || fit == LeftHandFit.PLAIN_ROOT) {
            return 0;
        }
        for (PitchClass tone : tones(sound)) {
            for (Pitch pitch : moment.event().pitches()) {
                int above = pitch.pitchClass().above(tone);
                if (above == 1 || above == 11) {
                    return points.of(sound.kind() == LeftHandKind.BASS ? BASS : CHORD);
                }
            }
        }
        return 0;
    }

    private static List<PitchClass> tones(LeftHandSound sound) {
        PitchClass root = sound.root();
        if (sound.kind() == LeftHandKind.BASS) {
            return List.of(root);
        }
        return switch (sound.third()) {
            case MAJOR -> List.of(root, root.plus(4), root.plus(FIFTH));
            case MINOR -> List.of(root, root.plus(3), root.plus(FIFTH));
            case NONE -> List.of(root, root.plus(FIFTH));
        };
    }
}
