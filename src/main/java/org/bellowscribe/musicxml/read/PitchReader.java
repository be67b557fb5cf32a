package org.bellowscribe.musicxml.read;

import java.math.BigDecimal;
import org.audiveris.proxymusic.Note;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Sounding pitches. An octave shift or an octave clef changes nothing: MusicXML writes the pitch behind them. */
final class PitchReader {

    private PitchReader() {}

    /**
     * Returns the sounding pitch of a note, or null if it has none that twelve equal semitones can give.
     *
     * @param transposition semitones from written to sounding
     */
    static @Nullable Pitch read(Note note, int transposition) {
        org.audiveris.proxymusic.Pitch written = note.getPitch();
        if (written == null || written.getStep() == null) {
            return null;
        }
        BigDecimal alter = written.getAlter() == null ? BigDecimal.ZERO : written.getAlter();
        if (!isWhole(alter)) {
            return null;
        }
        int semitone = PitchClass.semitoneOf(written.getStep().value().charAt(0));
        int midi = 12 * (written.getOctave() + 1) + semitone + alter.intValue() + transposition;
        return midi < 0 || midi > 127 ? null : new Pitch(midi);
    }

    /** Returns what keeps a pitch from being read: no step, a pitch off the scale, or one between two semitones. */
    static OddValue problem(Note note, Place place) {
        org.audiveris.proxymusic.Pitch written = note.getPitch();
        String step = written.getStep() == null ? "?" : written.getStep().value();
        BigDecimal alter = written.getAlter() == null ? BigDecimal.ZERO : written.getAlter();
        if (isWhole(alter)) {
            return new OddValue("pitch", step + " " + alter.toPlainString() + " " + written.getOctave(), place);
        }
        return OddValue.between(step + written.getOctave(), alter, place);
    }

    static boolean isWhole(BigDecimal value) {
        return value.stripTrailingZeros().scale() <= 0;
    }
}
