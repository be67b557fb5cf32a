package org.bellowscribe.instrument.file;

import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Moves an instrument: melody buttons and left hand. Its reeds move with their pitches, and take air accordingly. */
final class Transposition {

    private Transposition() {}

    /**
     * Returns the instrument some semitones higher, or lower if negative.
     *
     * @param semitones few enough to keep every note between C-1 and G9; an instrument of the library allows 24
     */
    static Instrument of(Instrument base, int semitones) {
        return new Instrument(
                base.id(),
                base.name(),
                base.buttons().stream().map(button -> of(button, semitones)).toList(),
                base.leftHand().stream().map(button -> of(button, semitones)).toList(),
                base.bellows(),
                base.air());
    }

    private static Button of(Button button, int semitones) {
        return new Button(
                button.row(),
                button.number(),
                of(button.push(), semitones),
                of(button.pull(), semitones),
                button.hand());
    }

    private static @Nullable Pitch of(@Nullable Pitch pitch, int semitones) {
        return pitch == null ? null : pitch.plus(semitones);
    }

    private static LeftHandButton of(LeftHandButton button, int semitones) {
        return new LeftHandButton(
                button.column(), button.number(), of(button.push(), semitones), of(button.pull(), semitones));
    }

    private static @Nullable LeftHandSound of(@Nullable LeftHandSound sound, int semitones) {
        return sound == null
                ? null
                : new LeftHandSound(sound.kind(), sound.root().plus(semitones), sound.third());
    }
}
