package org.bellowscribe.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.PlainText;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.theory.Key;

/** Fits for people: the best few of each tune, one reason why others fail, and the table of the book. */
public final class FitText implements FitWriter {

    private static final int KEYS = 6;

    private final int best;

    /**
     * Creates the writer.
     *
     * @param best how many trials of a tune to show; 0 for all
     */
    public FitText(int best) {
        this.best = best;
    }

    @Override
    public String begin() {
        return "";
    }

    @Override
    public String tune(TuneFit fit) {
        StringBuilder text = new StringBuilder();
        text.append("%s, in %s (%s)%n"
                .formatted(
                        PlainText.line(fit.tune().title().replaceAll("\\s+", " ")),
                        fit.tune().measures().get(0).key().name(),
                        PlainText.line(fit.file())));
        List<Trial> fitting =
                fit.trials().stream().filter(trial -> trial.obstacle() == null).toList();
        List<Trial> shown = best == 0 ? fit.trials() : fitting.subList(0, Math.min(best, fitting.size()));
        shown.forEach(trial -> text.append(line(fit, trial)));
        int failing = fit.trials().size() - fitting.size();
        if (best > 0) {
            text.append(
                    "  %d of %d fit%n".formatted(fitting.size(), fit.trials().size()));
            if (failing > 0) {
                text.append(failure(fit.trials().get(fitting.size())));
            }
        }
        return text.append("%n".formatted()).toString();
    }

    private static String line(TuneFit fit, Trial trial) {
        String cost = trial.cost() != null
                ? "cost " + trial.cost().total()
                : trial.obstacle() == null ? "estimate " + trial.estimate() : "";
        String reason = trial.obstacle() == null ? manySigns(trial.soundingKey(fit.tune())) : why(trial.obstacle());
        String line = "  %-22s %3s  %-12s %-9s  %-13s %s"
                .formatted(
                        trial.instrument().id(),
                        trial.semitones() == 0 ? "0" : "%+d".formatted(trial.semitones()),
                        trial.soundingKey(fit.tune()).name(),
                        trial.verdict().label(),
                        cost,
                        reason);
        return line.stripTrailing() + System.lineSeparator();
    }

    private static String manySigns(Key key) {
        return key.hasManySigns() ? key.signs() : "";
    }

    private static String failure(Trial trial) {
        Diagnostic obstacle = trial.obstacle();
        return obstacle == null
                ? ""
                : "  first to fail: %s %s: %s%n"
                        .formatted(
                                trial.instrument().id(),
                                trial.semitones() == 0 ? "as written" : "%+d".formatted(trial.semitones()),
                                why(obstacle));
    }

    private static String why(Diagnostic obstacle) {
        String where = obstacle.place().describe();
        return where.isEmpty() ? obstacle.text() : where + ": " + obstacle.text();
    }

    @Override
    public String end(BookFit book) {
        if (book.tunes() < 2) {
            return "";
        }
        StringBuilder text = new StringBuilder();
        text.append("%-22s %8s %10s %8s  %s%n".formatted("instrument", "plays", "as written", "best for", "keys"));
        for (BookFit.Line line : book.lines()) {
            text.append("%-22s %4d/%-4d %9d %8d  %s"
                            .formatted(
                                    line.instrument().id(),
                                    line.plays(),
                                    book.tunes(),
                                    line.asWritten(),
                                    line.bestFor(),
                                    keys(line.keys()))
                            .stripTrailing())
                    .append(System.lineSeparator());
        }
        return text.toString();
    }

    private static String keys(Map<String, Integer> keys) {
        String first = keys.entrySet().stream()
                .limit(KEYS)
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .collect(Collectors.joining(", "));
        return keys.size() > KEYS ? first + ", ..." : first;
    }
}
