package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.report.TuneSummary;

/** Writes the index of a report: every tune of the run with its figures, in the order of the files. */
public final class IndexPage {

    private static final String HEAD = """
            <table id="tunes"><caption class="vh">Tunes</caption><thead><tr><th scope="col">tune</th><th scope="col">grade</th><th scope="col">measures</th>\
            <th scope="col">reversals</th><th scope="col">air</th><th scope="col">start</th><th scope="col">cost</th></tr></thead><tbody>
            """;

    private IndexPage() {}

    /**
     * Returns the index.
     *
     * @param name what the run was about, such as the name of its instrument
     */
    public static String of(List<IndexLine> lines, String name) {
        StringBuilder body = new StringBuilder(
                "<body class=\"index\">\n<header><h1>Marked tunes</h1>\n<p class=\"facts\"><span>%s</span> <span>%s</span></p></header>\n<main>\n"
                        .formatted(Html.text(name), count(lines)));
        body.append(
                "<p id=\"find\" hidden><label>Find <input type=\"search\" id=\"sought\" autocomplete=\"off\"></label> <span id=\"hits\" role=\"status\"></span></p>\n");
        body.append("<div class=\"wide\">").append(HEAD);
        lines.stream().filter(line -> line.summary() != null).forEach(line -> body.append(row(line)));
        body.append("</tbody></table></div>\n").append(refused(lines)).append("</main>\n</body>\n");
        return PageFrame.around("Marked tunes", "", PageFrame.script(SharedFiles.SCRIPT), body.toString());
    }

    private static String count(List<IndexLine> lines) {
        long marked = lines.stream().filter(line -> line.summary() != null).count();
        long not = lines.size() - marked;
        return "%d %s%s"
                .formatted(marked, marked == 1 ? "tune" : "tunes", not == 0 ? "" : ", %d not marked".formatted(not));
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

    private static String refused(List<IndexLine> lines) {
        StringBuilder list = new StringBuilder();
        lines.stream()
                .filter(line -> line.summary() == null)
                .forEach(line -> list.append("<li><b dir=\"auto\">%s</b>: %s</li>\n"
                        .formatted(Html.text(line.title()), Html.text(line.why()))));
        return list.isEmpty() ? "" : "<section id=\"refused\"><h2>Not marked</h2>\n<ul>\n" + list + "</ul></section>\n";
    }
}
