package org.bellowscribe.cli;

import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/** An option that takes a value. */
final class ValueOption {

    private ValueOption() {}

    /** Adds one to the options of a command. */
    static void add(Options options, String name, String argument, String description) {
        options.addOption(Option.builder()
                .longOpt(name)
                .hasArg()
                .argName(argument)
                .desc(description)
                .get());
    }
}
