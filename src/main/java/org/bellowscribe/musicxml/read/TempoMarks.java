package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** The tempos stated anywhere in the score. */
final class TempoMarks {

    private final List<Mark> marks = new ArrayList<>();

    private record Mark(int measure, Fraction onset, double quartersPerMinute) {}

    /** Adds a tempo; null says that there is none. */
    void add(int measure, Fraction onset, @Nullable Double quartersPerMinute) {
        if (quartersPerMinute != null) {
            marks.add(new Mark(measure, onset, quartersPerMinute));
        }
    }

    /** Returns the earliest tempo in quarter notes a minute, or null if the score states none. */
    @Nullable
    Double first() {
        return marks.stream()
                .min(Comparator.comparingInt(Mark::measure).thenComparing(Mark::onset))
                .map(Mark::quartersPerMinute)
                .orElse(null);
    }

    /** Returns the slowest tempo; 0 if there is none. */
    double slowest() {
        return marks.stream().mapToDouble(Mark::quartersPerMinute).min().orElse(0);
    }

    /** Returns the fastest tempo; 0 if there is none. */
    double fastest() {
        return marks.stream().mapToDouble(Mark::quartersPerMinute).max().orElse(0);
    }
}
