package org.bellowscribe.page;

import java.util.List;
import java.util.Locale;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.TermPoints;
import org.bellowscribe.report.DifficultyText;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;

/** How difficult a tune is, term by term, each with the measure where there is most of it: what to practise first. */
final class PractiseSection {

    // What would be shown as nothing is left out.
    private static final double LEAST = 0.05;

    private final Tune tune;
    private final Difficulty difficulty;
    private final List<String> measures;

    PractiseSection(Tune tune, Difficulty difficulty) {
        this.tune = tune;
        this.difficulty = difficulty;
        measures = new Whereabouts(tune).measures();
    }

    /** Returns the section's content. */
    String html() {
        StringBuilder html =
                new StringBuilder("<p>%s%s</p>\n".formatted(Html.text(DifficultyText.why(difficulty)), first()));
        html.append(
                "<table class=\"costs\"><caption class=\"vh\">Terms of the difficulty</caption><thead><tr>"
                        + "<th scope=\"col\">term</th><th scope=\"col\">points</th><th scope=\"col\">hardest from</th></tr></thead><tbody>\n");
        for (TermPoints term : difficulty.terms()) {
            if (term.points() >= LEAST) {
                html.append("<tr><th scope=\"row\">%s <small>%s %s</small></th><td>%s</td><td>%s</td></tr>\n"
                        .formatted(
                                Html.text(term.term().label()),
                                number("%.2f", term.figure()),
                                Html.text(term.term().unit()),
                                number("%.1f", term.points()),
                                term.event() < 0 ? "" : place(term.event())));
            }
        }
        return html.append("</tbody></table>\n").toString();
    }

    private String first() {
        return difficulty.reasons().stream()
                .filter(term -> term.event() >= 0)
                .findFirst()
                .map(term -> " Practise first from %s on, for %s."
                        .formatted(place(term.event()), Html.text(term.term().label())))
                .orElse("");
    }

    private String place(int event) {
        return "<a href=\"#s%d\">measure %s</a>"
                .formatted(
                        event, Html.text(measures.get(tune.events().get(event).measure())));
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
