package org.bellowscribe.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.TermPoints;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;

/** How difficult a tune is, as a table that a teacher can argue with. */
public final class DifficultyText {

    private static final String ROW = "    %-38s %8s %-16s %6s %7s  %s";

    private DifficultyText() {}

    /**
     * Returns the table: why this grade, then a line for each term.
     *
     * @param tune the tune, for the names of its measures
     */
    public static List<String> lines(Tune tune, Difficulty difficulty) {
        List<String> measures = new Whereabouts(tune).measures();
        List<String> lines = new ArrayList<>();
        lines.add("  " + why(difficulty));
        lines.add(row("term", "figure", "", "weight", "points", "hardest"));
        for (TermPoints term : difficulty.terms()) {
            String where = term.event() < 0
                    ? ""
                    : "from measure "
                            + measures.get(tune.events().get(term.event()).measure());
            lines.add(row(
                    term.term().label(),
                    number("%.2f", term.figure()),
                    term.term().unit(),
                    number("%.3f", term.weight()),
                    number("%.2f", term.points()),
                    where));
        }
        lines.add(row("sum", "", "", "", number("%.2f", difficulty.points()), ""));
        return lines;
    }

    /** Returns one sentence that says why a tune has its grade. */
    public static String why(Difficulty difficulty) {
        String reasons = difficulty.reasons().stream()
                .map(term -> "%s (%s %s, %s points)"
                        .formatted(
                                term.term().label(),
                                number("%.1f", term.figure()),
                                term.term().unit(),
                                number("%.1f", term.points())))
                .collect(Collectors.joining(", "));
        return "Grade %d, %s, at %s points%s."
                .formatted(
                        difficulty.grade().number(),
                        difficulty.grade().name(),
                        number("%.1f", difficulty.points()),
                        reasons.isEmpty() ? "" : ", most of them for " + reasons);
    }

    private static String row(String... cells) {
        return ROW.formatted((Object[]) cells).stripTrailing();
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
