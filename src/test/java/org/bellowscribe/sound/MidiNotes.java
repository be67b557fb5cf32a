package org.bellowscribe.sound;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.bellowscribe.theory.Fraction;

/** A Standard MIDI File as a listener hears it; times in quarters from the start of the file. */
public final class MidiNotes {

    private final Sequence sequence;

    /**
     * A note.
     *
     * @param pitch MIDI number
     * @param start when it begins
     * @param end when it is over
     */
    public record Note(int pitch, Fraction start, Fraction end) {}

    /** Reads a file. */
    public MidiNotes(byte[] bytes) throws IOException {
        try {
            sequence = MidiSystem.getSequence(new ByteArrayInputStream(bytes));
        } catch (InvalidMidiDataException e) {
            throw new IOException(e);
        }
    }

    /**
     * Returns the notes of a channel in order of time, then pitch.
     *
     * @param channel from 1
     */
    public List<Note> channel(int channel) {
        List<Note> notes = new ArrayList<>();
        for (Track track : sequence.getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                MidiEvent event = track.get(i);
                if (event.getMessage() instanceof ShortMessage message && message.getChannel() == channel - 1) {
                    hear(notes, message, time(event.getTick()));
                }
            }
        }
        notes.sort(Comparator.comparing(Note::start).thenComparing(Note::pitch));
        return notes;
    }

    private static void hear(List<Note> notes, ShortMessage message, Fraction time) {
        if (message.getCommand() == ShortMessage.NOTE_ON) {
            notes.add(new Note(message.getData1(), time, Fraction.ZERO));
        } else if (message.getCommand() == ShortMessage.NOTE_OFF) {
            for (int i = notes.size() - 1; i >= 0; i--) {
                if (notes.get(i).pitch() == message.getData1()) {
                    if (notes.get(i).end().isPositive()) {
                        throw new AssertionError("A note ends twice: " + notes.get(i));
                    }
                    notes.set(i, new Note(message.getData1(), notes.get(i).start(), time));
                    return;
                }
            }
            throw new AssertionError("A note ends that has not begun: " + message.getData1());
        }
    }

    /**
     * Returns messages about the music as {@code time text}.
     *
     * @param type 1 for texts, 3 for names of tracks, 6 for markers
     */
    public List<String> texts(int type) {
        List<String> texts = new ArrayList<>();
        for (Track track : sequence.getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                if (track.get(i).getMessage() instanceof MetaMessage message && message.getType() == type) {
                    texts.add(
                            time(track.get(i).getTick()) + " " + new String(message.getData(), StandardCharsets.UTF_8));
                }
            }
        }
        return texts;
    }

    /** Returns how long it lasts, in seconds, by its own tempo. */
    public double seconds() {
        return sequence.getMicrosecondLength() / 1e6;
    }

    private Fraction time(long tick) {
        return Fraction.of(tick, sequence.getResolution());
    }
}
