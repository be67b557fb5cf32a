package org.bellowscribe.page;

import java.util.List;
import java.util.Locale;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.TermPoints;
import org.bellowscribe.exercise.Exercise;
import org.bellowscribe.report.DifficultyText;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;

/** How difficult a tune is, term by term, each with the measure where there is most of it: what to practise first. */
final class PractiseSection {

    private static final int FULL = 100;

    // What would be shown as nothing is left out.
    private static final double LEAST = 0.05;

    private final List<Exercise> exercises;
    private final Tune tune;
    private final Difficulty difficulty;
    private final Whereabouts places;
    private final List<String> measures;

    PractiseSection(TunePage page) {
        exercises = page.exercises();
        tune = page.tune().tune();
        difficulty = page.difficulty();
        places = new Whereabouts(tune);
        measures = places.measures();
    }

    /** Returns the section's content. */
    String html() {
        StringBuilder html =
                new StringBuilder("<p>%s%s</p>\n".formatted(first(), Html.text(DifficultyText.why(difficulty))));
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
        for (Exercise exercise : exercises) {
            list.append("<li>%s: %s</li>\n".formatted(link(exercise), what(exercise)));
        }
        return list.isEmpty() ? "" : "<h3>By itself, slowly</h3>\n<ul class=\"about\">\n" + list + "</ul>\n";
    }

    private static String what(Exercise exercise) {
        if (exercise instanceof Exercise.Chunk chunk) {
            return name(chunk) + from(chunk);
        }
        return exercise instanceof Exercise.AirMeasure ? "with the air button" : "the left hand alone";
    }

    private static String name(Exercise.Chunk chunk) {
        return chunk.hardest().id().replace('-', ' ');
    }

    private static String from(Exercise.Chunk chunk) {
        return chunk.percent() == FULL
                ? ""
                : ", from %d&nbsp;%% of the tempo on%s"
                        .formatted(chunk.percent(), chunk.estimated() ? " (estimate)" : "");
    }

    private String link(Exercise exercise) {
        int first = exercise.events().get(0);
        int last = exercise.events().get(exercise.events().size() - 1);
        boolean whole = !(exercise instanceof Exercise.Chunk);
        return "<a href=\"#s%d\">%s</a>"
                .formatted(first, Html.capital(Html.text(whole ? measures(first, last) : notes(first, last))));
    }

    private String measures(int first, int last) {
        String from = measure(first);
        String to = measure(last);
        return from.equals(to) ? "measure " + from : "measures %s to %s".formatted(from, to);
    }

    private String notes(int first, int last) {
        String from = places.name(first);
        String to = places.name(last);
        String measure = "measure " + measure(first) + ", ";
        return to.startsWith(measure) ? from + " to " + to.substring(measure.length()) : from + " to " + to;
    }

    private String measure(int event) {
        return measures.get(tune.events().get(event).measure());
    }

    /** Says what to practise first: the hardest change, or else where there is most of what makes the tune hard. */
    private String first() {
        for (Exercise exercise : exercises) {
            if (exercise instanceof Exercise.Chunk chunk) {
                return "<b>Practise first</b> %s, where the change is hardest (%s)%s. "
                        .formatted(link(chunk), name(chunk), from(chunk));
            }
        }
        return difficulty.reasons().stream()
                .filter(term -> term.event() >= 0)
                .findFirst()
                .map(term -> "<b>Practise first</b> from %s on, for %s. "
                        .formatted(place(term.event()), Html.text(term.term().label())))
                .orElse("");
    }

    private String place(int event) {
        return "<a href=\"#s%d\">measure %s</a>".formatted(event, Html.text(measure(event)));
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
