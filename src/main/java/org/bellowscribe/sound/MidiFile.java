package org.bellowscribe.sound;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/**
 * Writes one playing of a tune as a Standard MIDI File of type 1, as it sounds: a measure counted in, then every repeat and
 * ending. The first track has the tempo, as markers the sections, and as texts the directions where they change ({@code
 * push}, {@code pull}) and the presses of the air button ({@code air}, {@code light air}); the second the right hand on
 * channel 1, the third the left hand on channel 2, the fourth the count on channel 10. The octaves of the left hand are those
 * of {@link org.bellowscribe.lefthand.Voicing}. The same tune always gives the same bytes.
 */
public final class MidiFile {

    /** By the percussion map of General MIDI. */
    private static final int HIGH_WOOD_BLOCK = 76;

    private static final int LOW_WOOD_BLOCK = 77;

    private static final int RIGHT = 0;
    private static final int LEFT = 1;
    private static final int PERCUSSION = 9;
    private static final int LOUDNESS = 88;

    private MidiFile() {}

    /** Returns the file. */
    public static byte[] of(DecidedTune tune) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            MidiSystem.write(sequence(tune), 1, out);
            return out.toByteArray();
        } catch (InvalidMidiDataException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Sequence sequence(DecidedTune tune) throws InvalidMidiDataException {
        Ticks ticks = Ticks.of(tune);
        Sequence sequence = new Sequence(Sequence.PPQ, ticks.perQuarter());
        MidiTrack words = new MidiTrack(sequence.createTrack(), tune.tune().title());
        words.tempo(tune.tune().tempo().quartersPerMinute());
        Measure first = first(tune.tune());
        // Of a pick-up the measure before is counted too, as far as it lies before it.
        Fraction counted = first.time().measureLength().plus(first.beatOffset());
        TwoHands hands = new TwoHands(tune, ticks, words);
        hands.play(counted);
        new MidiTrack(sequence.createTrack(), "Right hand").hand(RIGHT, hands.right());
        new MidiTrack(sequence.createTrack(), "Left hand").hand(LEFT, hands.left());
        count(new MidiTrack(sequence.createTrack(), "Count"), first, counted, ticks);
        return sequence;
    }

    private static Measure first(Tune tune) {
        return tune.measureOf(tune.events().get(tune.eventOrder().get(0)));
    }

    private static void count(MidiTrack track, Measure first, Fraction until, Ticks ticks) {
        Fraction measure = first.time().measureLength();
        Fraction beat = Fraction.ZERO;
        Fraction bar = measure;
        while (beat.compareTo(until) < 0) {
            boolean one = beat.equals(Fraction.ZERO) || beat.equals(measure);
            long tick = ticks.of(beat);
            long end = tick + ticks.perQuarter() / 4;
            track.note(PERCUSSION, new Notes.Note(one ? HIGH_WOOD_BLOCK : LOW_WOOD_BLOCK, tick, end, LOUDNESS));
            Fraction next = beat.plus(first.time().pulse());
            boolean over = beat.compareTo(bar) < 0 && next.compareTo(bar) > 0;
            beat = over ? bar : next;
        }
    }
}
