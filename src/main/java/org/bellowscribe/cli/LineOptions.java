package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.jspecify.annotations.Nullable;

/** Which line of a score is the melody. */
final class LineOptions {

    private static final String PART = "part";
    private static final String STAFF = "staff";
    private static final String VOICE = "voice";

    private LineOptions() {}

    static void addTo(Options options) {
        add(options, PART, "NAME|ID|N", "The part with the melody; the first that is a single line if not given.");
        add(options, STAFF, "N", "The staff of that part; the first with notes if not given.");
        add(options, VOICE, "ID", "The voice of that staff; the highest if not given.");
    }

    private static void add(Options options, String name, String argument, String description) {
        options.addOption(Option.builder()
                .longOpt(name)
                .hasArg()
                .argName(argument)
                .desc(description)
                .get());
    }

    static ReadingOptions of(CommandLine line) throws UsageException {
        return new ReadingOptions(line.getOptionValue(PART), staff(line), line.getOptionValue(VOICE));
    }

    private static @Nullable Integer staff(CommandLine line) throws UsageException {
        String text = line.getOptionValue(STAFF);
        if (text == null) {
            return null;
        }
        if (!text.matches("[1-9]\\d?")) {
            throw new UsageException("--staff takes a whole number from 1 to 99, not %s.".formatted(text));
        }
        return Integer.valueOf(text);
    }
}
