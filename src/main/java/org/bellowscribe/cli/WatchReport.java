package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.batch.Result;
import org.bellowscribe.report.TuneSummary;

/** The line of each tune that was marked or refused, and nothing else. */
final class WatchReport implements Report {

    @Override
    public boolean needsPins() {
        return true;
    }

    @Override
    public void begin(Terminal terminal) {
        // Lines stand for themselves.
    }

    @Override
    public void each(Result result, Terminal terminal) {
        TuneSummary summary = result.summary();
        if (result.outcome() == Result.Outcome.UNCHANGED) {
            return;
        }
        if (summary == null) {
            terminal.out().println(MarkReport.refused(result));
            return;
        }
        terminal.out().print(MarkReport.figures(summary));
        result.told().forEach(line -> terminal.out().println(line));
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        // The next change comes.
    }
}
