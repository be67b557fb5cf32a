package org.bellowscribe.solver;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.ChordSymbol;
import org.jspecify.annotations.Nullable;

/**
 * What the left hand does at a moment where a sound is wanted.
 *
 * @param wanted the moment and what it wants
 * @param harmony the harmony that was meant
 * @param button the button pressed, or null if the left hand stays silent
 * @param sound what it sounds, or null if the left hand stays silent
 */
public record LeftHandPlay(
        WantedSound wanted,
        ChordSymbol harmony,
        @Nullable LeftHandButton button,
        @Nullable LeftHandSound sound) {

    /** Returns the label of what was wanted, such as {@code G}, {@code g} or {@code em}. */
    public String wantedLabel() {
        return wantedSound().label();
    }

    /**
     * Returns how what sounds stands to what was wanted.
     *
     * @throws IllegalStateException if the sound cannot stand in
     */
    public LeftHandFit fit() {
        LeftHandFit fit = sound == null ? LeftHandFit.SILENT : LeftHandFit.of(wanted, harmony, sound);
        if (fit == null) {
            throw new IllegalStateException("The sound (%s) must be able to stand in.".formatted(sound));
        }
        return fit;
    }

    private LeftHandSound wantedSound() {
        return wanted.kind() == LeftHandKind.BASS
                ? LeftHandSound.bass(wanted.tone().of(harmony))
                : LeftHandSound.chord(harmony.root(), harmony.isMinor() ? Third.MINOR : Third.MAJOR);
    }
}
