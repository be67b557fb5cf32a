package org.bellowscribe.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.PlainText;

/**
 * Comma-separated values (RFC 4180, Y. Shafranovich, 2005): CRLF, and quotation marks around what holds commas, quotation
 * marks or line ends.
 */
public final class Csv {

    private static final String FORMULA = "=+-@";
    private static final String LINE_END = "\r\n";

    private Csv() {}

    /** Returns a line with its end. */
    public static String line(List<String> fields) {
        return fields.stream().map(Csv::field).collect(Collectors.joining(",")) + LINE_END;
    }

    /** Returns a text of others as one line; one that a spreadsheet would take for a formula begins with an apostrophe. */
    public static String text(String words) {
        String plain = PlainText.line(words);
        return !plain.isEmpty() && FORMULA.indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
    }

    private static String field(String text) {
        boolean plain = Stream.of(",", "\"", "\r", "\n").noneMatch(text::contains);
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
