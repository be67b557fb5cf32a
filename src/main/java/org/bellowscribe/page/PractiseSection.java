package org.bellowscribe.page;

import java.util.List;
import java.util.Locale;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.difficulty.TermPoints;
import org.bellowscribe.exercise.Exercise;
import org.bellowscribe.exercise.Exercises;
import org.bellowscribe.report.DifficultyText;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;

/** How difficult a tune is, term by term, each with the measure where there is most of it: what to practise first. */
final class PractiseSection {

    // What would be shown as nothing is left out.
    private static final double LEAST = 0.05;

    private final DecidedTune decided;
    private final Tune tune;
    private final Difficulty difficulty;
    private final List<String> measures;

    PractiseSection(DecidedTune decided, Difficulty difficulty) {
        this.decided = decided;
        tune = decided.tune();
        this.difficulty = difficulty;
        measures = new Whereabouts(tune).measures();
    }

    /** Returns the section's content. */
    String html() {
        StringBuilder html =
                new StringBuilder("<p>%s%s</p>\n".formatted(Html.text(DifficultyText.why(difficulty)), first()));
        html.append(exercises());
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

    private String exercises() {
        StringBuilder list = new StringBuilder();
        for (Exercise exercise : Exercises.of(decided)) {
            list.append("<li>%s: %s</li>\n".formatted(place(exercise), what(exercise)));
        }
        return list.isEmpty() ? "" : "<h3>By itself, slowly</h3>\n<ul class=\"about\">\n" + list + "</ul>\n";
    }

    private static String what(Exercise exercise) {
        if (exercise instanceof Exercise.Chunk chunk) {
            return "the hardest change, from %d&nbsp;%% of the tempo on".formatted(chunk.percent());
        }
        return exercise instanceof Exercise.AirMeasure ? "with the air button" : "the left hand alone";
    }

    private String place(Exercise exercise) {
        int first = exercise.events().get(0);
        int last = exercise.events().get(exercise.events().size() - 1);
        String from = measures.get(tune.events().get(first).measure());
        String to = measures.get(tune.events().get(last).measure());
        String words;
        if (exercise instanceof Exercise.Chunk) {
            words = "%s to %s".formatted(new Whereabouts(tune).name(first), new Whereabouts(tune).name(last));
        } else {
            words = from.equals(to) ? "measure " + from : "measures %s to %s".formatted(from, to);
        }
        return "<a href=\"#s%d\">%s</a>".formatted(first, Html.capital(Html.text(words)));
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
