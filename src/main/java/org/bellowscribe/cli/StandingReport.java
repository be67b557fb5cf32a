package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.batch.Result;
import org.bellowscribe.diagnostic.PlainText;

/** What would be written and why, or what is out of date, one line a tune. */
final class StandingReport implements Report {

    private final boolean needsPins;

    /**
     * Creates a report.
     *
     * @param needsPins false if the pins beside each score do not count
     */
    StandingReport(boolean needsPins) {
        this.needsPins = needsPins;
    }

    @Override
    public boolean needsPins() {
        return needsPins;
    }

    @Override
    public void begin(Terminal terminal) {
        // Lines need no heading.
    }

    @Override
    public void each(Result result, Terminal terminal) {
        if (result.outcome() == Result.Outcome.TO_DO || result.outcome() == Result.Outcome.OUT_OF_DATE) {
            result.told().forEach(line -> terminal.out().println(PlainText.lines(line)));
        }
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        long toDo = Report.count(results, Result.Outcome.TO_DO);
        long outOfDate = Report.count(results, Result.Outcome.OUT_OF_DATE);
        terminal.out()
                .printf(
                        "%n%s; %d as they are, %d not marked. Nothing was written.%n",
                        toDo > 0 || outOfDate == 0
                                ? "%d would be marked".formatted(toDo)
                                : "%d out of date".formatted(outOfDate),
                        Report.count(results, Result.Outcome.UNCHANGED),
                        refusals.count());
        refusals.lines("marked").forEach(terminal.out()::println);
    }
}
