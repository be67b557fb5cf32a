package org.bellowscribe.cli;

import java.util.List;
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
        terminal.out().println(PlainText.line(result.source().shown()) + (result.done() ? "" : ": not stripped"));
    }

    @Override
    public void end(List<Result> results, List<String> failed, Terminal terminal) {
        long done = results.stream().filter(Result::done).count();
        terminal.out().printf("%n%d stripped, %d not.%n", done, failed.size());
    }
}
