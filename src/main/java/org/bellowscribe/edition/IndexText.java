package org.bellowscribe.edition;

import java.util.List;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.diagnostic.PlainText;

/** The index in plain text: a paragraph a tune, for readers of any kind. */
public final class IndexText {

    private static final int WIDTH = 78;
    private static final String INDENT = "    ";

    /** What stands in the line below the title. */
    private static final List<IndexColumn> FIGURES = List.of(
            IndexColumn.KEY,
            IndexColumn.TIME,
            IndexColumn.GRADE,
            IndexColumn.NEW_COUNT,
            IndexColumn.REVERSALS,
            IndexColumn.AIR,
            IndexColumn.OPENING);

    private static final List<IndexColumn> WORDS = List.of(
            IndexColumn.BEGINS,
            IndexColumn.NEW,
            IndexColumn.WHY,
            IndexColumn.NOTES,
            IndexColumn.PROBLEMS,
            IndexColumn.FILE,
            IndexColumn.FURTHER);

    private final StringBuilder text = new StringBuilder();

    private final Style style;

    private IndexText(Style style) {
        this.style = style;
    }

    /** Returns the index, each line with its line feed. */
    public static String of(Edition edition) {
        IndexText index = new IndexText(edition.style());
        index.line(index.style.book().say(BookText.INDEX, "title", PlainText.line(edition.title())));
        index.line(index.style
                .book()
                .say(
                        BookText.INDEX_FOR,
                        "name",
                        PlainText.line(edition.instrument().name())));
        TextLines.wrap(edition.order(), WIDTH).forEach(index::line);
        for (int i = 0; i < edition.tunes().size(); i++) {
            index.tune(i + 1, edition.tunes().get(i));
        }
        if (!edition.refused().isEmpty()) {
            index.line("");
            index.line(index.style.book().say(BookText.MISSING));
            edition.refused().forEach(index::missing);
        }
        return index.text.toString();
    }

    private void tune(int number, EditionTune tune) {
        IndexColumn.IndexEntry entry = IndexColumn.IndexEntry.of(tune, style);
        line("");
        line("%d. %s    (%s      )".formatted(number, PlainText.line(tune.title()), IndexColumn.PAGE.heading(style)));
        String figures = String.join(
                "; ",
                FIGURES.stream()
                        .map(column -> column.heading(style) + " " + column.of(entry))
                        .toList());
        paragraph(figures);
        WORDS.stream()
                .filter(column -> !column.of(entry).isEmpty())
                .forEach(column -> paragraph(column.heading(style) + ": " + column.of(entry)));
    }

    private void missing(Edition.Refused refused) {
        line("");
        line("%s (%s)".formatted(PlainText.line(refused.title()), PlainText.line(refused.file())));
        paragraph(refused.reason());
    }

    private void paragraph(String words) {
        List<String> lines = TextLines.wrap(PlainText.line(words), WIDTH - 2 * INDENT.length());
        for (int i = 0; i < lines.size(); i++) {
            line(INDENT + (i == 0 ? "" : INDENT) + lines.get(i));
        }
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
