package org.bellowscribe.edition;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.edition.IndexColumn.IndexEntry;

/** The index as a page: a row of figures for each tune, below it what is new and what there is to say. */
public final class IndexHtml {

    private static final List<IndexColumn> FIGURES = List.of(
            IndexColumn.KEY,
            IndexColumn.TIME,
            IndexColumn.GRADE,
            IndexColumn.NEW_COUNT,
            IndexColumn.REVERSALS,
            IndexColumn.AIR,
            IndexColumn.OPENING,
            IndexColumn.PAGE);

    private static final List<IndexColumn> WORDS =
            List.of(IndexColumn.BEGINS, IndexColumn.NEW, IndexColumn.WHY, IndexColumn.NOTES, IndexColumn.PROBLEMS);

    private static final String SCORE = ".musicxml";

    private final Style style;
    private final HtmlPage page;

    private IndexHtml(Edition edition) {
        style = edition.style();
        page = new HtmlPage(style.book().say(BookText.INDEX, "title", edition.title()), "64em", style.language());
    }

    /** Returns the page. */
    public static String of(Edition edition) {
        IndexHtml index = new IndexHtml(edition);
        index.page.element("h1", edition.title());
        index.page.element(
                "p", index.say(BookText.INDEX_FOR, "name", edition.instrument().name()));
        index.page.element("p", edition.order());
        index.table(edition);
        if (!edition.refused().isEmpty()) {
            index.page.element("h2", index.style.book().say(BookText.MISSING));
            index.page.list(edition.refused().stream()
                    .map(refused -> "%s (%s): %s".formatted(refused.title(), refused.file(), refused.reason()))
                    .toList());
        }
        return index.page.close();
    }

    private void table(Edition edition) {
        page.markup("<div class=\"wide\">\n<table>\n<thead>\n<tr>");
        heading(style.book().say(BookText.NUMBER));
        heading(IndexColumn.TUNE.heading(style));
        FIGURES.forEach(column -> heading(column.heading(style)));
        page.markup("</tr>\n</thead>\n");
        for (int i = 0; i < edition.tunes().size(); i++) {
            tune(i + 1, IndexEntry.of(edition.tunes().get(i), style));
        }
        page.markup("</table>\n</div>\n");
    }

    private void heading(String heading) {
        page.markup("<th scope=\"col\">%s</th>".formatted(HtmlPage.escaped(heading)));
    }

    private String say(BookText text, String place, String value) {
        return style.book().say(text, place, value);
    }

    private void tune(int number, IndexEntry entry) {
        page.markup(
                "<tbody>\n<tr class=\"main\"><td class=\"number\">%d</td><th scope=\"row\"><a href=\"%s\">%s</a></th>"
                        .formatted(number, link(entry.tune().file()), HtmlPage.escaped(entry.title())));
        for (IndexColumn column : FIGURES) {
            String type = column == IndexColumn.PAGE ? " class=\"page\"" : "";
            page.markup("<td" + type + ">" + HtmlPage.escaped(column.of(entry)) + "</td>");
        }
        page.markup("</tr>\n<tr class=\"words\"><td colspan=\"%d\">".formatted(2 + FIGURES.size()));
        WORDS.stream()
                .filter(column -> !column.of(entry).isEmpty())
                .forEach(column -> page.markup("<div><b>%s:</b> %s</div>"
                        .formatted(HtmlPage.escaped(column.heading(style)), HtmlPage.escaped(column.of(entry)))));
        sheets(entry.tune());
        page.markup("</td></tr>\n</tbody>\n");
    }

    private void sheets(EditionTune tune) {
        if (tune.further().isEmpty()) {
            return;
        }
        page.markup(
                "<div class=\"screen\"><b>%s:</b> ".formatted(HtmlPage.escaped(IndexColumn.FURTHER.heading(style))));
        page.markup(tune.further().stream()
                .map(file -> "<a href=\"%s\">%s</a>".formatted(link(file), HtmlPage.escaped(name(tune, file))))
                .collect(Collectors.joining(", ")));
        page.markup("</div>");
    }

    /** Returns what a sheet is, in the language of the index, or the name of its file. */
    private String name(EditionTune tune, String file) {
        String stem = tune.file().substring(0, Math.max(0, tune.file().lastIndexOf('.')));
        String ending = file.startsWith(stem + ".") && file.endsWith(SCORE)
                ? file.substring(stem.length() + 1, file.length() - SCORE.length())
                : "";
        return Arrays.stream(BookText.values())
                .filter(text -> text.id().equals(ending) || text.id().equals("stage-" + ending))
                .map(text -> style.book().say(text))
                .findFirst()
                .orElse(file);
    }

    // A path of its own, so that a colon in the name begins no scheme.
    private static String link(String file) {
        try {
            String path = new URI(null, null, "/./" + file, null).toASCIIString();
            return HtmlPage.escaped(path.substring(1));
        } catch (URISyntaxException e) {
            throw new IllegalStateException("Every path can be written as an address.", e);
        }
    }
}
