package org.bellowscribe.solver;

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

    private LeftHandSound wantedSound() {
        return wanted.kind() == LeftHandKind.BASS
                ? LeftHandSound.bass(harmony.root())
                : LeftHandSound.chord(harmony.root(), harmony.isMinor() ? Third.MINOR : Third.MAJOR);
    }
}
