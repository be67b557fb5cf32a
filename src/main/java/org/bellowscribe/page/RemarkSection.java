package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;

/** What the tool says about a tune, with links to the measures. */
final class RemarkSection {

    private RemarkSection() {}

    /**
     * Returns the section's content.
     *
     * @param measures how many measures the tune has
     */
    static String of(List<Diagnostic> remarks, int measures) {
        if (remarks.isEmpty()) {
            return "<p>There is nothing to remark.</p>\n";
        }
        StringBuilder html = new StringBuilder("<ul class=\"about remarks\">\n");
        for (Diagnostic remark : remarks) {
            int measure = remark.place().measure();
            boolean here = measure > 0 && measure <= measures;
            String where = Html.text(remark.place().describe());
            html.append("<li class=\"%s\"%s><b>%s</b> "
                    .formatted(
                            remark.severity().label(),
                            here ? " data-measure=\"%d\"".formatted(measure - 1) : "",
                            Html.capital(remark.severity().label())));
            if (!where.isEmpty()) {
                html.append(here ? "<a href=\"#m%d\">%s</a>: ".formatted(measure, where) : where + ": ");
            }
            html.append(Html.text(remark.text()));
            remark.advice().forEach(advice -> html.append(' ').append(Html.text(advice)));
            html.append("</li>\n");
        }
        return html.append("</ul>\n").toString();
    }
}
