package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** The time signature of each measure; a score without one is given the one that most of its measures fill. */
final class TimeFinder {

    private static final TimeSignature COMMON = new TimeSignature(4, 4);
    private static final int[] BEAT_TYPES = {4, 8, 16};
    private static final Fraction DOTTED_QUARTER = Fraction.of(3, 2);

    private final List<MeasureContent> measures;

    TimeFinder(List<MeasureContent> measures) {
        this.measures = measures;
    }

    /** Returns one time signature for each measure; measures before the first signature share it. */
    List<TimeSignature> times(List<Diagnostic> remarks) {
        TimeSignature current = measures.stream()
                .map(MeasureContent::time)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
        if (current == null) {
            current = guess();
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "The score has no time signature; it is read as %s.".formatted(current)));
        }
        List<TimeSignature> times = new ArrayList<>();
        for (MeasureContent measure : measures) {
            TimeSignature own = measure.time();
            current = own == null ? current : own;
            times.add(current);
        }
        return times;
    }

    private TimeSignature guess() {
        Map<Fraction, Integer> counts = new HashMap<>();
        measures.forEach(measure -> counts.merge(measure.length(), 1, Integer::sum));
        Fraction usual = Fraction.ZERO;
        for (MeasureContent measure : measures) {
            boolean more = counts.getOrDefault(measure.length(), 0) > counts.getOrDefault(usual, 0);
            usual = measure.length().isPositive() && (more || !usual.isPositive()) ? measure.length() : usual;
        }
        TimeSignature time = signature(usual);
        return time == null ? COMMON : time;
    }

    private @Nullable TimeSignature signature(Fraction length) {
        if (length.equals(Fraction.of(3, 1)) && dottedQuarters()) {
            return new TimeSignature(6, 8);
        }
        for (int beatType : BEAT_TYPES) {
            Fraction beats = length.times(Fraction.of(beatType, 4));
            if (beats.denominator() == 1 && beats.numerator() >= 1 && beats.numerator() <= 12) {
                return new TimeSignature((int) beats.numerator(), beatType);
            }
        }
        return null;
    }

    private boolean dottedQuarters() {
        long dotted = count(DOTTED_QUARTER);
        return dotted > count(Fraction.QUARTER);
    }

    private long count(Fraction duration) {
        return measures.stream()
                .flatMap(measure -> measure.notes().stream())
                .filter(note -> note.duration().equals(duration))
                .count();
    }
}
