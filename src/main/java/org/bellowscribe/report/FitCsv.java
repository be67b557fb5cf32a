package org.bellowscribe.report;

import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.fit.TuneFit;

/** Fits as comma-separated values: one line a trial. A table has one kind of line only, so that of the book is left out. */
public final class FitCsv implements FitWriter {

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
        return CsvLine.of(List.of(
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
        return CsvLine.of(List.of(
                CsvLine.text(fit.file()),
                CsvLine.text(fit.tune().title()),
                String.valueOf(place + 1),
                CsvLine.text(trial.instrument().id()),
                String.valueOf(trial.semitones()),
                keys.getOrDefault(trial.semitones(), ""),
                trial.verdict().label(),
                trial.cost() == null ? "" : String.valueOf(trial.cost().total()),
                obstacle == null ? String.valueOf(trial.estimate()) : "",
                obstacle == null || obstacle.place().measure() == 0
                        ? ""
                        : String.valueOf(obstacle.place().measure()),
                obstacle == null ? "" : CsvLine.text(obstacle.text())));
    }

    @Override
    public String end(BookFit book) {
        return "";
    }
}
