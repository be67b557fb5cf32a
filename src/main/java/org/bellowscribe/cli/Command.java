package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;

/** One command of the tool. */
interface Command {

    /** Returns the word that calls it. */
    String name();

    /** Returns one sentence for people. */
    String summary();

    /** Returns what stands after the word, such as {@code INPUT... --out DIR}. */
    String usage();

    /** Returns its options, in the order in which to list them. */
    Options options();

    /**
     * Does it.
     *
     * @throws UsageException if the line is wrong; then nothing was done
     */
    ExitCode run(CommandLine line, Terminal terminal) throws UsageException;
}
