package org.bellowscribe.instrument;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/**
 * Finds the keys that the rows of an instrument are built for. A row of the trade pushes the tonic chord of its key and
 * pulls the other notes of the scale; rows of accidentals or helper buttons have no key.
 */
public final class HomeKeys {

    /** Of four notes three must fit: low notes, accidentals and single changed buttons stand out of the pattern. */
    private static final double ENOUGH = 0.75;

    /** Fewer buttons than an octave of the scale needs are helper buttons. */
    private static final int FEWEST_BUTTONS = 4;

    private static final List<Integer> TRIAD = List.of(0, 4, 7);
    private static final List<Integer> SCALE = List.of(0, 2, 4, 5, 7, 9, 11);

    private HomeKeys() {}

    /** Returns the tonic of the major key of each row that has one, by row from 1. */
    public static SortedMap<Integer, PitchClass> of(Instrument instrument) {
        SortedMap<Integer, PitchClass> keys = new TreeMap<>();
        for (int row = 1; row <= instrument.rows(); row++) {
            PitchClass key = of(instrument, row);
            if (key != null) {
                keys.put(row, key);
            }
        }
        return keys;
    }

    private static @Nullable PitchClass of(Instrument instrument, int row) {
        List<PitchClass> push = sounding(instrument, row, BellowsDirection.PUSH);
        List<PitchClass> pull = sounding(instrument, row, BellowsDirection.PULL);
        PitchClass best = IntStream.range(0, 12)
                .mapToObj(PitchClass::of)
                .max(Comparator.comparingDouble(tonic -> share(push, tonic, TRIAD)))
                .orElseThrow();
        boolean fits = push.size() >= FEWEST_BUTTONS
                && share(push, best, TRIAD) >= ENOUGH
                && share(pull, best, SCALE) >= ENOUGH;
        return fits ? best : null;
    }

    private static List<PitchClass> sounding(Instrument instrument, int row, BellowsDirection direction) {
        return instrument.buttons().stream()
                .filter(button -> button.row() == row)
                .map(button -> button.pitch(direction))
                .filter(Objects::nonNull)
                .map(pitch -> Objects.requireNonNull(pitch).pitchClass())
                .toList();
    }

    /** Returns which share of the notes belongs to a chord or scale, 0 if there are no notes. */
    private static double share(List<PitchClass> notes, PitchClass tonic, List<Integer> degrees) {
        long fitting = notes.stream()
                .filter(note -> degrees.contains(note.above(tonic)))
                .count();
        return notes.isEmpty() ? 0 : (double) fitting / notes.size();
    }
}
