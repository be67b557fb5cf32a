package org.bellowscribe.sound;

import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.bellowscribe.diagnostic.PlainText;
import org.bellowscribe.score.TimeSignature;

/** Writes messages into a track of a Standard MIDI File (MIDI Manufacturers Association, Standard MIDI Files 1.0). */
final class MidiTrack {

    /** By the list of sounds of General MIDI, where it is 22 because sounds are counted from 1. */
    private static final int ACCORDION = 21;

    private static final int TEXT = 0x01;
    private static final int NAME = 0x03;
    private static final int MARKER = 0x06;
    private static final int TEMPO = 0x51;
    private static final int METER = 0x58;
    private static final int LONGEST_QUARTER = 0xFFFFFF;
    private static final double MICROSECONDS = 60_000_000;
    private static final int BYTE = 8;

    private final Track track;

    MidiTrack(Track track, String name) {
        this.track = track;
        meta(0, NAME, bytes(name));
    }

    void text(long tick, String words) {
        meta(tick, TEXT, bytes(words));
    }

    void marker(long tick, String words) {
        meta(tick, MARKER, bytes(words));
    }

    void tempo(double quartersPerMinute) {
        int quarter = (int) Math.max(1, Math.min(LONGEST_QUARTER, Math.round(MICROSECONDS / quartersPerMinute)));
        meta(0, TEMPO, new byte[] {(byte) (quarter >> (2 * BYTE)), (byte) (quarter >> BYTE), (byte) quarter});
    }

    /** Writes a time signature: the lower number as a power of two. */
    void meter(long tick, TimeSignature time) {
        int clocksPerQuarter = 24;
        int thirtySecondsPerQuarter = 8;
        meta(tick, METER, new byte[] {
            (byte) time.beats(),
            (byte) Integer.numberOfTrailingZeros(time.beatType()),
            (byte) clocksPerQuarter,
            (byte) thirtySecondsPerQuarter
        });
    }

    /** Writes the notes of one hand, on an accordion. */
    void hand(int channel, List<Notes.Note> notes) {
        add(0, message(ShortMessage.PROGRAM_CHANGE, channel, ACCORDION, 0));
        notes.forEach(note -> note(channel, note));
    }

    /** Writes the beginning and the end of a note, after those that were written before it. */
    void note(int channel, Notes.Note note) {
        add(note.start(), message(ShortMessage.NOTE_ON, channel, note.pitch(), note.loudness()));
        add(note.end(), message(ShortMessage.NOTE_OFF, channel, note.pitch(), 0));
    }

    private static byte[] bytes(String words) {
        return PlainText.line(words).getBytes(StandardCharsets.UTF_8);
    }

    private void meta(long tick, int type, byte[] data) {
        try {
            add(tick, new MetaMessage(type, data, data.length));
        } catch (InvalidMidiDataException e) {
            throw new IllegalStateException(e);
        }
    }

    private static MidiMessage message(int command, int channel, int first, int second) {
        try {
            return new ShortMessage(command, channel, first, second);
        } catch (InvalidMidiDataException e) {
            throw new IllegalStateException(e);
        }
    }

    private void add(long tick, MidiMessage message) {
        track.add(new MidiEvent(message, tick));
    }
}
