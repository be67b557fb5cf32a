package org.bellowscribe.instrument.file;

import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.jspecify.annotations.Nullable;

/** Takes the thirds out of chords, as a stop or tape over the reeds does. */
final class Thirdless {

    private Thirdless() {}

    /** Returns the button with root and fifth only; a bass stays as it is. */
    static LeftHandButton of(LeftHandButton button) {
        return new LeftHandButton(button.column(), button.number(), of(button.push()), of(button.pull()));
    }

    private static @Nullable LeftHandSound of(@Nullable LeftHandSound sound) {
        return sound == null || sound.kind() == LeftHandKind.BASS
                ? sound
                : LeftHandSound.chord(sound.root(), Third.NONE);
    }
}
