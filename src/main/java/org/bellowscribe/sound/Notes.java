package org.bellowscribe.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The notes of one hand. No two of one pitch overlap: the one before ends where the next begins. */
final class Notes {

    private final List<Note> notes = new ArrayList<>();
    private final Map<Integer, Integer> lastOfPitch = new HashMap<>();

    /**
     * A note.
     *
     * @param pitch MIDI number
     * @param start tick where it begins
     * @param end tick where it is over
     * @param loudness 1 to 127
     */
    record Note(int pitch, long start, long end, int loudness) {

        Note until(long other) {
            return new Note(pitch, start, other, loudness);
        }
    }

    /** Strikes a note. */
    void strike(Note note) {
        Integer before = lastOfPitch.put(note.pitch(), notes.size());
        if (before != null && notes.get(before).end() > note.start()) {
            notes.set(before, notes.get(before).until(note.start()));
        }
        notes.add(note);
    }

    /** Lets the last note of a pitch sound on, and strikes it if none sounds there. */
    void hold(Note note) {
        Integer before = lastOfPitch.get(note.pitch());
        if (before != null && notes.get(before).end() == note.start()) {
            notes.set(before, notes.get(before).until(note.end()));
        } else {
            strike(note);
        }
    }

    /** Returns the notes in the order in which they were struck. */
    List<Note> all() {
        return notes;
    }
}
