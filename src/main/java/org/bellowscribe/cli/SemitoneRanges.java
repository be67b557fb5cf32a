package org.bellowscribe.cli;

import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.fit.FitOptions;

/** Reads transpositions such as {@code -5..7,12}. */
final class SemitoneRanges {

    private static final Pattern RANGE = Pattern.compile("\\s*([+-]?\\d{1,2})(?:\\.\\.([+-]?\\d{1,2}))?\\s*");

    private SemitoneRanges() {}

    /** Returns the semitones, rising, each once. */
    static List<Integer> parse(String text) throws UsageException {
        TreeSet<Integer> semitones = new TreeSet<>();
        for (String part : text.split(",", -1)) {
            Matcher range = RANGE.matcher(part);
            if (!range.matches()) {
                throw wrong(text);
            }
            int from = Integer.parseInt(range.group(1));
            int to = range.group(2) == null ? from : Integer.parseInt(range.group(2));
            int most = FitOptions.MOST_SEMITONES;
            if (from > to || from < -most || to > most) {
                throw wrong(text);
            }
            for (int each = from; each <= to; each++) {
                semitones.add(each);
            }
        }
        return List.copyOf(semitones);
    }

    private static UsageException wrong(String text) {
        int most = FitOptions.MOST_SEMITONES;
        return new UsageException(
                ("--transpose takes whole numbers and rising ranges from -%d to %d with commas between,"
                                + " such as -5..7,12, not %s.")
                        .formatted(most, most, text));
    }
}
