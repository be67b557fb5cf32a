package org.bellowscribe.cli;

import java.util.List;
import java.util.Map;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;

/** One command of the tool. */
interface Command {

    /** Returns the word that calls it. */
    String name();

    /** Returns one sentence for people. */
    String summary();

    /** Returns what stands after the word, such as {@code INPUT... --out DIR}. */
    String usage();

    /** Returns its options, in the order in which to list them. */
    List<CommandOption<?>> options();

    /**
     * Returns words that may stand first behind the command, each with those that may follow it, where a file may be meant
     * too; none if files come first.
     */
    default Map<String, List<String>> firstWords() {
        return Map.of();
    }

    /** Adds to its help what stands below the options. */
    default void addTo(HelpPage page) {
        // Mostly nothing.
    }

    /**
     * Does it.
     *
     * @throws UsageException if the line is wrong; then nothing was done
     */
    ExitCode run(CommandWords words, Terminal terminal) throws UsageException;
}
