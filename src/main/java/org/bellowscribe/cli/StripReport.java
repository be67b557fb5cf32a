package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.batch.Jobs;
import org.bellowscribe.batch.Result;
import org.bellowscribe.diagnostic.PlainText;

/** One line a file, then totals. */
final class StripReport implements Report {

    @Override
    public void begin(Terminal terminal) {
        // Names need no heading.
    }

    @Override
    public void each(Result result, Terminal terminal) {
        String told = result.done() ? String.join(", ", result.told()) : "not stripped";
        terminal.out().println(PlainText.line(result.source().shown()) + ": " + told);
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        long done = results.stream().filter(Result::done).count();
        long without = results.stream()
                .filter(result -> result.told().contains(Jobs.NO_MARKS))
                .count();
        terminal.out().printf("%n%d stripped, %d without marks, %d not.%n", done - without, without, refusals.count());
        refusals.lines("stripped").forEach(terminal.out()::println);
    }
}
