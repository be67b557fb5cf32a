package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** The tempos stated anywhere in the score. */
final class TempoMarks {

    // A player may mean an eighth at 60 in a slow air and a half note at 200 in a galop; common practice, no source.
    private static final double SLOWEST = 30;
    private static final double FASTEST = 400;

    private static final Comparator<Mark> IN_TIME =
            Comparator.comparingInt(Mark::measure).thenComparing(Mark::onset);

    private final List<Mark> marks = new ArrayList<>();

    private record Mark(int measure, Fraction onset, double quartersPerMinute) {

        boolean mayBeMeant() {
            return quartersPerMinute >= SLOWEST && quartersPerMinute <= FASTEST;
        }
    }

    /** Adds a tempo; null says that there is none. */
    void add(int measure, Fraction onset, @Nullable Double quartersPerMinute) {
        if (quartersPerMinute != null) {
            marks.add(new Mark(measure, onset, quartersPerMinute));
        }
    }

    /** Returns the earliest tempo that a player may mean, in quarter notes a minute, or null if there is none. */
    @Nullable
    Double first() {
        return marks.stream()
                .filter(Mark::mayBeMeant)
                .min(IN_TIME)
                .map(Mark::quartersPerMinute)
                .orElse(null);
    }

    /** Returns the tempo with which the score begins if no player can mean it, else null. */
    @Nullable
    Double oddBeginning() {
        return marks.stream()
                .min(IN_TIME)
                .filter(mark -> !mark.mayBeMeant())
                .map(Mark::quartersPerMinute)
                .orElse(null);
    }

    /** Returns the slowest tempo that a player may mean; 0 if there is none. */
    double slowest() {
        return meant().min().orElse(0);
    }

    /** Returns the fastest tempo that a player may mean; 0 if there is none. */
    double fastest() {
        return meant().max().orElse(0);
    }

    private DoubleStream meant() {
        return marks.stream().filter(Mark::mayBeMeant).mapToDouble(Mark::quartersPerMinute);
    }
}
