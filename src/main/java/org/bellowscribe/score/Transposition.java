package org.bellowscribe.score;

import java.util.List;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.KeyMove;
import org.bellowscribe.theory.Pitch;

/** Moves a tune as it sounds: notes, chord symbols and keys. */
public final class Transposition {

    private static final int HIGHEST = 127;

    private Transposition() {}

    /** Returns true if every note of a tune stays between C-1 and G9. */
    public static boolean isPossible(Tune tune, int semitones) {
        return tune.events().stream()
                .flatMap(event -> event.pitches().stream())
                .mapToInt(pitch -> pitch.midiNumber() + semitones)
                .allMatch(midiNumber -> midiNumber >= 0 && midiNumber <= HIGHEST);
    }

    /**
     * Returns the tune some semitones higher, or lower if negative.
     *
     * @throws IllegalArgumentException if a note would leave the range of pitches
     */
    public static Tune of(Tune tune, int semitones) {
        if (semitones == 0) {
            return tune;
        }
        List<Integer> signatures =
                tune.measures().stream().map(measure -> measure.key().fifths()).toList();
        KeyMove keys = KeyMove.of(signatures, semitones);
        return new Tune(
                tune.title(),
                tune.part(),
                tune.measures().stream().map(measure -> of(measure, keys)).toList(),
                tune.events().stream().map(event -> of(event, semitones)).toList(),
                tune.harmonies().stream().map(harmony -> of(harmony, semitones)).toList(),
                tune.tempo(),
                tune.playOrder(),
                tune.diagnostics());
    }

    private static Measure of(Measure measure, KeyMove keys) {
        Key key = new Key(keys.signature(measure.key().fifths()), measure.key().mode());
        return new Measure(
                measure.index(), measure.number(), measure.length(), measure.beatOffset(), measure.time(), key);
    }

    private static Event of(Event event, int semitones) {
        List<Pitch> pitches =
                event.pitches().stream().map(pitch -> pitch.plus(semitones)).toList();
        return new Event(
                event.index(),
                event.measure(),
                event.onset(),
                event.duration(),
                pitches,
                event.noteIndices(),
                event.heldOver(),
                event.slurred());
    }

    private static Harmony of(Harmony harmony, int semitones) {
        ChordSymbol chord = harmony.chord();
        return chord == null ? harmony : new Harmony(harmony.measure(), harmony.onset(), chord.plus(semitones));
    }
}
