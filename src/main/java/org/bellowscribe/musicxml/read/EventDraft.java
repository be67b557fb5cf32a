package org.bellowscribe.musicxml.read;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.score.Event;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;

/** A note group or rest of the melody while the tune is put together. */
final class EventDraft {

    private final int measure;
    private final Fraction onset;
    private Fraction duration;
    // First note of each pitch; ordered by pitch.
    private final SortedMap<Pitch, WrittenNote> notes = new TreeMap<>();
    private final List<Integer> rest;
    private int endMeasure;
    private Fraction end;
    private boolean tiedOn = true;
    private boolean tiedBack = true;
    private boolean heldOver;
    private boolean slurred;

    /**
     * Creates a rest.
     *
     * @param rest place of the rest among the notes of the file; empty for a gap
     */
    EventDraft(int measure, Fraction onset, Fraction duration, List<Integer> rest) {
        this.measure = measure;
        this.onset = onset;
        this.duration = duration;
        this.rest = rest;
        endMeasure = measure;
        end = onset.plus(duration);
    }

    /** Adds a note to the group; a second one of the same pitch is passed over. */
    void add(WrittenNote note, Pitch pitch) {
        tiedOn &= note.tieStart();
        tiedBack &= note.tieStop();
        notes.putIfAbsent(pitch, note);
    }

    int measure() {
        return measure;
    }

    Fraction onset() {
        return onset;
    }

    Fraction end() {
        return end;
    }

    int endMeasure() {
        return endMeasure;
    }

    boolean isRest() {
        return notes.isEmpty();
    }

    /** Shortens the event so that it ends at a time of its measure. */
    void cut(Fraction newEnd) {
        duration = newEnd.minus(onset);
        end = newEnd;
    }

    /** Returns true if every note of this group is tied to the same note of the next. */
    boolean isTiedTo(EventDraft next) {
        return !isRest() && tiedOn && next.tiedBack && notes.keySet().equals(next.notes.keySet());
    }

    /** Lengthens this group by the next, to which it is tied. */
    void join(EventDraft next) {
        duration = duration.plus(next.duration);
        tiedOn = next.tiedOn;
        endMeasure = next.endMeasure;
        end = next.end;
    }

    /** Says that this group is never struck: it sounds on from the one before. */
    void holdOver() {
        heldOver = true;
    }

    /** Says that a slur leads here from what is played before. */
    void slur() {
        slurred = true;
    }

    Event toEvent(int index) {
        List<Integer> indices = isRest()
                ? rest
                : notes.values().stream().map(WrittenNote::noteIndex).toList();
        return new Event(index, measure, onset, duration, List.copyOf(notes.keySet()), indices, heldOver, slurred);
    }
}
