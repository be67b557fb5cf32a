package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.batch.Result;

/** What a command prints about its files. */
interface Report {

    /** Tells whether the pins beside each score count in what is reported. */
    default boolean needsPins() {
        return false;
    }

    /** Prints what stands above all lines. */
    void begin(Terminal terminal);

    /** Prints the line of one file. */
    void each(Result result, Terminal terminal);

    /**
     * Prints the totals.
     *
     * @param results all results
     * @param failed names of the files and inputs of which nothing came
     */
    void end(List<Result> results, List<String> failed, Terminal terminal);
}
