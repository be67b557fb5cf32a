package org.bellowscribe.report;

import java.util.List;
import org.bellowscribe.guess.Guesses;

/** Tells how many notes of a tune a player would guess. */
public final class GuessText {

    private GuessText() {}

    /** Returns a line that is indented like the others under the figures of a tune. */
    public static String line(Guesses guesses) {
        List<String> rules = guesses.byRule().entrySet().stream()
                .map(rule -> "%s %d of %d"
                        .formatted(
                                rule.getKey().words(),
                                rule.getValue().right(),
                                rule.getValue().all()))
                .toList();
        return "  rules of thumb guess %d of %d notes: %s"
                .formatted(guesses.rate().right(), guesses.rate().all(), String.join(", ", rules));
    }
}
