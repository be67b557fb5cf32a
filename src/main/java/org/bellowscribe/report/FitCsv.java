package org.bellowscribe.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.PlainText;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.fit.TuneFit;

/**
 * Fits as comma-separated values (RFC 4180, Y. Shafranovich, 2005): one line a trial, CRLF, and quotation marks around
 * what holds commas, quotation marks or line ends; texts that a spreadsheet would take for formulas begin with an
 * apostrophe. A table has one kind of line only, so that of the book is left out.
 */
public final class FitCsv implements FitWriter {

    private static final String FORMULA = "=+-@";
    private static final String LINE_END = "\r\n";

    private final int best;

    /**
     * Creates the writer.
     *
     * @param best how many trials of a tune to write; 0 for all
     */
    public FitCsv(int best) {
        this.best = best;
    }

    @Override
    public String begin() {
        return line(List.of(
                "file",
                "title",
                "rank",
                "instrument",
                "semitones",
                "key",
                "verdict",
                "cost",
                "estimate",
                "measure",
                "reason"));
    }

    @Override
    public String tune(TuneFit fit) {
        StringBuilder lines = new StringBuilder();
        Map<Integer, String> keys = fit.keyNames();
        int count =
                best == 0 ? fit.trials().size() : Math.min(best, fit.trials().size());
        for (int i = 0; i < count; i++) {
            lines.append(trial(fit, i, keys));
        }
        return lines.toString();
    }

    private static String trial(TuneFit fit, int place, Map<Integer, String> keys) {
        Trial trial = fit.trials().get(place);
        Diagnostic obstacle = trial.obstacle();
        return line(List.of(
                text(fit.file()),
                text(fit.tune().title()),
                String.valueOf(place + 1),
                text(trial.instrument().id()),
                String.valueOf(trial.semitones()),
                keys.getOrDefault(trial.semitones(), ""),
                trial.verdict().label(),
                trial.cost() == null ? "" : String.valueOf(trial.cost().total()),
                obstacle == null ? String.valueOf(trial.estimate()) : "",
                obstacle == null || obstacle.place().measure() == 0
                        ? ""
                        : String.valueOf(obstacle.place().measure()),
                obstacle == null ? "" : text(obstacle.text())));
    }

    @Override
    public String end(BookFit book) {
        return "";
    }

    private static String line(List<String> fields) {
        return fields.stream().map(FitCsv::field).collect(Collectors.joining(",")) + LINE_END;
    }

    // A spreadsheet takes a text that begins so for a formula; the apostrophe makes it a text.
    private static String text(String words) {
        String plain = PlainText.line(words);
        return !plain.isEmpty() && FORMULA.indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
    }

    private static String field(String text) {
        boolean plain = Stream.of(",", "\"", "\r", "\n").noneMatch(text::contains);
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
