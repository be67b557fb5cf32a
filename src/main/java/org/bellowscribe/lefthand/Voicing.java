package org.bellowscribe.lefthand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.NoteName;
import org.bellowscribe.theory.PitchClass;
import org.bellowscribe.theory.Spelling;

/**
 * Which notes a left-hand button sounds. The names are those of the instrument; the octaves differ by maker and no
 * instrument file has them, so they are common practice without source, after what the air model takes for granted: a bass
 * sounds two reeds an octave apart (S4: Bill Farmer, sound emulators; S17: accordeon-en-bretagne.bzh, "Accords main
 * gauche") and is written as one note, the lower, from E2 up; the tones of a chord lie in close position within the octave
 * from F#3, about 185 to 350 Hz.
 */
public final class Voicing {

    /** E2. */
    private static final int LOWEST_BASS = 40;

    /** F#3. */
    private static final int LOWEST_CHORD = 54;

    private Voicing() {}

    /**
     * Returns the notes of a sound, lowest first.
     *
     * @param semitones how much higher than it sounds it is to be written, lower if negative; the octave stays
     * @param fifths sharps of the key in which it is to be written, flats if negative
     */
    public static List<NoteName> notes(LeftHandSound sound, int semitones, int fifths) {
        PitchClass written = sound.root().plus(semitones);
        Spelling root = Spelling.of(written, fifths);
        if (sound.kind() == LeftHandKind.BASS) {
            return List.of(root.from(LOWEST_BASS));
        }
        List<NoteName> notes = new ArrayList<>();
        notes.add(root.from(LOWEST_CHORD));
        if (sound.third() != Third.NONE) {
            notes.add(root.third(sound.third() == Third.MINOR).from(LOWEST_CHORD));
        }
        notes.add(root.fifth().from(LOWEST_CHORD));
        notes.sort(Comparator.comparingInt(NoteName::midiNumber));
        return notes;
    }
}
