package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Sources;

/** What a command prints about its files. */
interface Report {

    /** Tells whether the pins beside each score count in what is reported. */
    default boolean needsPins() {
        return false;
    }

    /** Tells whether the remarks on a file stand in its line, so that nobody else needs to print them. */
    default boolean holdsRemarks() {
        return false;
    }

    /** Prints what stands above all lines. */
    void begin(Terminal terminal);

    /** Prints the line of one file. */
    void each(Result result, Terminal terminal);

    /** Prints a remark about an input that gave nothing, or a file of pins that belongs to no score. */
    default void problem(Sources.Problem problem, Terminal terminal) {
        terminal.remark(problem.input(), problem.diagnostic());
    }

    /**
     * Prints the totals.
     *
     * @param results all results
     * @param refusals the files and inputs of which nothing came
     */
    void end(List<Result> results, Refusals refusals, Terminal terminal);

    /** Counts the results that ended in a way. */
    static long count(List<Result> results, Result.Outcome outcome) {
        return results.stream().filter(result -> result.outcome() == outcome).count();
    }
}
