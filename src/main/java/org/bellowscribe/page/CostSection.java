package org.bellowscribe.page;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.solver.Cost;
import org.bellowscribe.solver.Rule;

/** What the marks cost, rule by rule. */
final class CostSection {

    private static final Map<String, String> SUMMARIES =
            Rule.all().stream().collect(Collectors.toMap(Rule::id, Rule::summary));

    private CostSection() {}

    /** Returns the section's content. */
    static String of(Cost cost) {
        StringBuilder html = new StringBuilder("<p>%d points in all%s.</p>\n"
                .formatted(
                        cost.total(),
                        cost.isProved()
                                ? "; no marks cost less"
                                : "; the least is %d or more".formatted(cost.lowerBound())));
        if (cost.byRule().isEmpty()) {
            return html.toString();
        }
        html.append(
                "<table class=\"costs\"><caption class=\"vh\">Points by rule</caption><thead><tr><th scope=\"col\">rule</th>"
                        + "<th scope=\"col\">points</th><th scope=\"col\">times</th></tr></thead><tbody>\n");
        List<Map.Entry<String, Integer>> rules = cost.byRule().entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<String, Integer> rule) -> -rule.getValue())
                        .thenComparing(Map.Entry::getKey))
                .toList();
        for (Map.Entry<String, Integer> rule : rules) {
            Integer times = cost.timesByRule().get(rule.getKey());
            html.append("<tr><th scope=\"row\">%s <small>%s</small></th><td>%d</td><td>%s</td></tr>\n"
                    .formatted(
                            Html.text(rule.getKey().replace('-', ' ')),
                            Html.text(SUMMARIES.getOrDefault(rule.getKey(), "")),
                            rule.getValue(),
                            times == null ? "" : times.toString()));
        }
        return html.append("</tbody></table>\n").toString();
    }
}
