package org.bellowscribe.accompaniment;

import java.util.List;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tempo;
import org.jspecify.annotations.Nullable;

/**
 * Which pattern each measure of a tune has: one named for the measure, else one named for its time, else one named for the
 * tune, else likewise one that the manner of playing names, else the first of the library that suits time and tempo.
 *
 * @param library the patterns to choose from where nobody names one; the last must suit every measure
 * @param named what the user named, in the order in which it was named; the later counts
 * @param ofManner what the manner of playing names, likewise; it counts where nothing that the user named holds
 */
public record PatternChoice(List<Pattern> library, List<Named> named, List<Named> ofManner) {

    /** Copies the lists. */
    public PatternChoice {
        library = List.copyOf(library);
        named = List.copyOf(named);
        ofManner = List.copyOf(ofManner);
    }

    /** Creates a choice in which the manner of playing has no say. */
    public PatternChoice(List<Pattern> library, List<Named> named) {
        this(library, named, List.of());
    }

    /** Returns this choice with what a manner of playing names. */
    public PatternChoice inManner(List<Named> others) {
        return new PatternChoice(library, named, others);
    }

    /**
     * A pattern that somebody named.
     *
     * @param pattern the pattern
     * @param time time signature for which it was named, such as {@code 3/4}, or null
     * @param first printed number of the first measure for which it was named, or 0 for all
     * @param last printed number of the last such measure
     */
    public record Named(Pattern pattern, @Nullable String time, int first, int last) {

        /** Returns what it was named for, such as {@code measures 17 to 24} or {@code 3/4}; empty if for the tune. */
        public String where() {
            if (first == 0) {
                return time == null ? "" : time;
            }
            return first == last ? "measure " + first : "measures %d to %d".formatted(first, last);
        }

        private boolean holds(Measure measure) {
            if (first > 0) {
                String number = measure.number();
                return number.matches("\\d{1,6}")
                        && Integer.parseInt(number) >= first
                        && Integer.parseInt(number) <= last;
            }
            return time == null || time.equals(measure.time().toString());
        }

        private int weight() {
            return first > 0 ? 2 : time != null ? 1 : 0;
        }
    }

    /** Returns what the user named that holds for no measure of a tune. */
    public List<Named> idle(List<Measure> measures) {
        return named.stream()
                .filter(each -> measures.stream().noneMatch(each::holds))
                .toList();
    }

    /** Returns the pattern of a measure. */
    Pattern of(Measure measure, Tempo tempo) {
        Named best = best(named, measure);
        best = best == null ? best(ofManner, measure) : best;
        if (best != null) {
            return best.pattern();
        }
        for (Pattern pattern : library) {
            if (pattern.suits(measure.time(), tempo)) {
                return pattern;
            }
        }
        throw new IllegalStateException("Some pattern must suit every measure (%s).".formatted(measure.time()));
    }

    private static @Nullable Named best(List<Named> among, Measure measure) {
        Named best = null;
        for (Named each : among) {
            if (each.holds(measure) && (best == null || each.weight() >= best.weight())) {
                best = each;
            }
        }
        return best;
    }
}
