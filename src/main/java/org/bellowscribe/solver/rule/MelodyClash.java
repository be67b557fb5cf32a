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
 * most; and a bass a whole tone below the melody note, such as C under D (common practice, no source). The sound that the
 * harmony asks for is never charged, but for a semitone where the harmony was only guessed and another may be meant: D
 * under C sharp.
 */
public final class MelodyClash implements LeftHandRule {

    private static final String BASS = "bass";
    private static final String CHORD = "chord";
    private static final String GUESSED = "guessed";
    private static final int WHOLE_TONE = 2;

    @Override
    public String id() {
        return "melody-clash";
    }

    @Override
    public String summary() {
        return "A stand-in or a guessed harmony of the left hand that rubs against the melody note over it.";
    }

    @Override
    public List<String> cases() {
        return List.of(BASS, CHORD, GUESSED);
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        LeftHandSound sound = play.sound();
        boolean asked = fit == LeftHandFit.EXACT || fit == LeftHandFit.PLAIN_ROOT;
        if (sound == null || (asked && play.wanted().harmonies().size() == 1)) {
            return 0;
        }
        boolean bass = sound.kind() == LeftHandKind.BASS;
        boolean rubs = moment.event().pitches().stream()
                .anyMatch(pitch -> sound.tones().stream().anyMatch(tone -> rubs(pitch, tone, bass && !asked)));
        return rubs ? points.of(asked ? GUESSED : bass ? BASS : CHORD) : 0;
    }

    private static boolean rubs(Pitch pitch, PitchClass tone, boolean tooByATone) {
        int above = pitch.pitchClass().above(tone);
        return above == 1 || above == 11 || (tooByATone && above == WHOLE_TONE);
    }
}
