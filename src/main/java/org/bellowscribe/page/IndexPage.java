package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.report.TuneSummary;

/** Writes the index of a report: every tune of the run with its figures, in the order of the files. */
public final class IndexPage {

    private static final String HEAD = """
            <table><caption class="vh">Tunes, %s</caption><thead><tr><th scope="col">tune</th><th scope="col">grade</th><th scope="col">measures</th>\
            <th scope="col">reversals</th><th scope="col">air</th><th scope="col">start</th><th scope="col">cost</th></tr></thead><tbody>
            """;

    private IndexPage() {}

    /**
     * Returns the index.
     *
     * @param title what the report is called
     * @param parts at least one; several stand below each other under their names
     */
    public static String of(String title, List<IndexPart> parts) {
        StringBuilder body = new StringBuilder(
                "<body class=\"index\">\n<header><h1 dir=\"auto\">%s</h1>\n".formatted(Html.text(title)));
        if (parts.size() == 1) {
            body.append(facts(parts.get(0).name(), parts.get(0).count()));
        }
        body.append("</header>\n<main>\n<p id=\"find\" hidden><label>Find <input type=\"search\" id=\"sought\""
                + " autocomplete=\"off\"></label> <span id=\"hits\" role=\"status\"></span></p>\n<div id=\"tunes\">\n");
        for (IndexPart part : parts) {
            if (parts.size() > 1) {
                body.append("<h2>%s</h2>\n".formatted(Html.text(part.name()))).append(facts(part.count()));
            }
            body.append(table(part));
        }
        body.append("</div>\n");
        parts.forEach(part -> body.append(refused(part, parts.size() > 1)));
        body.append("</main>\n</body>\n");
        return PageFrame.around(title, "", PageFrame.script(SharedFiles.SCRIPT), body.toString());
    }

    private static String facts(String... facts) {
        StringBuilder spans = new StringBuilder("<p class=\"facts\">");
        for (String fact : facts) {
            spans.append("<span>").append(Html.text(fact)).append("</span> ");
        }
        return spans.append("</p>\n").toString();
    }

    private static String table(IndexPart part) {
        StringBuilder table = new StringBuilder(HEAD.formatted(Html.text(part.name())));
        part.lines().stream().filter(line -> line.summary() != null).forEach(line -> table.append(row(line)));
        return table.append("</tbody></table>\n").toString();
    }

    private static String row(IndexLine line) {
        TuneSummary summary = line.summary();
        String page = line.page();
        if (summary == null || page == null) {
            return "";
        }
        return "<tr><th scope=\"row\" dir=\"auto\"><a href=\"%s\">%s</a></th><td>%d</td><td>%d</td><td>%d</td><td>%d</td><td>%d&nbsp;%%</td><td>%d</td></tr>\n"
                .formatted(
                        Html.link(page),
                        Html.text(line.title()),
                        line.grade(),
                        summary.measures(),
                        summary.reversals(),
                        summary.airMarks(),
                        summary.startPercent(),
                        summary.cost().total());
    }

    private static String refused(IndexPart part, boolean named) {
        StringBuilder list = new StringBuilder();
        part.lines().stream()
                .filter(line -> line.summary() == null)
                .forEach(line -> list.append("<li><b dir=\"auto\">%s</b>: %s</li>\n"
                        .formatted(Html.text(line.title()), Html.text(line.why()))));
        return list.isEmpty()
                ? ""
                : "<section class=\"refused\"><h2>Not marked%s</h2>\n<ul>\n%s</ul></section>\n"
                        .formatted(named ? ": " + Html.text(part.name()) : "", list);
    }
}
