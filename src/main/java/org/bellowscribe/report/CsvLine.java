package org.bellowscribe.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.PlainText;

/**
 * Lines of comma-separated values (RFC 4180, Y. Shafranovich, 2005): CRLF, and quotation marks around what holds commas,
 * quotation marks or line ends; texts that a spreadsheet would take for formulas begin with an apostrophe.
 */
public final class CsvLine {

    private static final String FORMULA = "=+-@";
    private static final String LINE_END = "\r\n";

    private CsvLine() {}

    /** Returns a line of fields. */
    public static String of(List<String> fields) {
        return fields.stream().map(CsvLine::field).collect(Collectors.joining(",")) + LINE_END;
    }

    /** Returns a text of a user as a field: in one line, and no formula. */
    public static String text(String words) {
        String plain = PlainText.line(words);
        return !plain.isEmpty() && FORMULA.indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
    }

    private static String field(String text) {
        boolean plain = Stream.of(",", "\"", "\r", "\n").noneMatch(text::contains);
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
