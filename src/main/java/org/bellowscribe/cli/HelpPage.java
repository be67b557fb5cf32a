package org.bellowscribe.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.help.TableDefinition;
import org.apache.commons.cli.help.TextHelpAppendable;
import org.apache.commons.cli.help.TextStyle;

/** A page of help: paragraphs, headings and tables of two columns, broken to the width of a terminal. */
final class HelpPage {

    static final String INPUT =
            "INPUT is a score (.musicxml, .xml, .mxl), a folder of scores, a pattern in quotes ('book/**/*.mxl'), a list"
                    + " (@FILE, one a line; @- from standard input), or - alone: a score comes from standard input, the"
                    + " result goes to standard output and the report to standard error.";

    static final String EXIT_CODES = "Exit codes: 0 all done, 1 some tune not, 2 wrong use, 3 the tool broke.";
    static final String CAUTION = "Marks are a proposal. Never force the bellows; if playing hurts, stop and ask a"
            + " teacher or a health professional.";

    private static final int WIDTH = 100;
    private static final int LABEL = 26;
    private static final int GAP = 2;
    private final StringBuilder text = new StringBuilder();
    private final List<List<String>> entries = new ArrayList<>();
    private int label = LABEL;

    /** Adds a line as it is. */
    HelpPage line(String line) {
        endTable();
        text.append(line).append('\n');
        return this;
    }

    /** Adds an empty line and a heading. */
    HelpPage heading(String heading) {
        return line("").line(heading);
    }

    /** Adds an empty line and a paragraph. */
    HelpPage paragraph(String paragraph) {
        return line("").wrapped("", paragraph);
    }

    /** Adds a paragraph, indented, without an empty line. */
    HelpPage indented(String paragraph) {
        return wrapped(" ".repeat(GAP), paragraph);
    }

    private HelpPage wrapped(String indent, String paragraph) {
        endTable();
        TextStyle style = TextStyle.builder()
                .setLeftPad(indent.length())
                .setMaxWidth(WIDTH - indent.length())
                .get();
        write(page -> page.printWrapped(paragraph, style));
        return this;
    }

    /** Makes the first columns of the tables that follow wide enough for labels, so that all are alike. */
    HelpPage labels(List<String> labels) {
        endTable();
        label = Math.max(LABEL, labels.stream().mapToInt(String::length).max().orElse(0));
        return this;
    }

    /** Adds a line of a table. */
    HelpPage entry(String label, String meaning) {
        entries.add(List.of(label, meaning));
        return this;
    }

    private void endTable() {
        if (!entries.isEmpty()) {
            List<List<String>> rows = List.copyOf(entries);
            entries.clear();
            TextStyle labels = TextStyle.builder()
                    .setLeftPad(GAP)
                    .setMinWidth(label)
                    .setMaxWidth(label)
                    .setScalable(false)
                    .get();
            TextStyle meanings = TextStyle.builder()
                    .setLeftPad(GAP)
                    .setMaxWidth(WIDTH - label - 2 * GAP)
                    .get();
            TableDefinition table = TableDefinition.from("", List.of(labels, meanings), List.of("", ""), rows);
            write(page -> page.appendTable(table));
        }
    }

    @FunctionalInterface
    private interface Writing {
        void to(TextHelpAppendable page) throws IOException;
    }

    private void write(Writing writing) {
        StringBuilder lines = new StringBuilder();
        TextHelpAppendable page = new TextHelpAppendable(lines);
        page.setMaxWidth(WIDTH);
        page.setLeftPad(0);
        try {
            writing.to(page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // Without the spaces at the ends of lines, and the heads of a table, which are empty.
        lines.toString()
                .lines()
                .filter(line -> !line.isBlank())
                .forEach(line -> text.append(line.stripTrailing()).append('\n'));
    }

    /** Returns the page. */
    String text() {
        endTable();
        return text.toString();
    }
}
