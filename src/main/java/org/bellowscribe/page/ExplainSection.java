package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.explain.Comparison;
import org.bellowscribe.solver.explain.Explanation;

/** Why some notes are played so and not otherwise: every other way with its price. */
final class ExplainSection {

    private final Whereabouts places;

    ExplainSection(Tune tune) {
        places = new Whereabouts(tune);
    }

    /** Returns the section's content. */
    String html(List<Explanation> explanations) {
        StringBuilder html = new StringBuilder();
        explanations.forEach(each -> html.append(details(each)));
        return html.toString();
    }

    private String details(Explanation explanation) {
        int event = explanation.step().event().index();
        StringBuilder html = new StringBuilder("<details data-step=\"%d\"><summary>%s</summary>\n"
                .formatted(event, Html.capital(Html.text(places.name(event)))));
        html.append("<table><thead><tr><th scope=\"col\">instead</th><th scope=\"col\">points</th>"
                + "<th scope=\"col\">because, with all else decided anew</th></tr></thead><tbody>\n");
        for (Explanation.Candidate candidate : explanation.candidates()) {
            Comparison comparison = candidate.comparison();
            html.append("<tr><th scope=\"row\">%s</th><td>%s</td><td>%s</td></tr>\n"
                    .formatted(
                            Html.text(candidate.pin().describe()),
                            comparison == null ? "–" : points(comparison),
                            Html.text(
                                    comparison == null ? why(candidate.obstacle()) : because(candidate, comparison))));
        }
        return html.append("</tbody></table></details>\n").toString();
    }

    private static String points(Comparison comparison) {
        return "%s%+d".formatted(comparison.proved() ? "" : "~", comparison.points());
    }

    private static String because(Explanation.Candidate candidate, Comparison comparison) {
        String once = candidate.obstacle() == Explanation.Obstacle.ONCE_ONLY ? "for one time through only; " : "";
        return once + (comparison.byRule().isEmpty() ? "as good" : comparison.describe());
    }

    private static String why(Explanation.Obstacle obstacle) {
        return switch (obstacle) {
            case PIN -> "a pin asks for something else";
            case MISSING -> "not in the direction of these notes";
            default -> "the bellows do not last so";
        };
    }
}
