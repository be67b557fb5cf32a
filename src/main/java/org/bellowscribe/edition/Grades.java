package org.bellowscribe.edition;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.TermPoints;

/** Says why a tune has its grade. */
final class Grades {

    private Grades() {}

    /** Returns the grade with the terms that add most. */
    static String why(Difficulty difficulty, Wordings<BookText> words) {
        String terms = difficulty.reasons().stream()
                .map(term -> "%s (%s)".formatted(name(term, words), number(term.points())))
                .collect(Collectors.joining(", "));
        return words.say(
                BookText.GRADED,
                Map.of(
                        "grade",
                        difficulty.grade().number(),
                        "points",
                        number(difficulty.points()),
                        "terms",
                        terms.isEmpty() ? "-" : terms));
    }

    private static String name(TermPoints term, Wordings<BookText> words) {
        return words.say(BookText.valueOf("TERM_" + term.term().name()));
    }

    private static String number(double points) {
        return String.format(Locale.ROOT, "%.1f", points);
    }
}
