package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.jspecify.annotations.Nullable;

/** Which part of a score has the left hand written out. */
final class LeftHandPartOption {

    private static final String LEFT_HAND_PART = "left-hand-part";

    private LeftHandPartOption() {}

    static void addTo(Options options) {
        ValueOption.add(
                options,
                LEFT_HAND_PART,
                "NAME|ID|N",
                "The part, in it the lowest staff, that has the left hand written out: a note alone is a bass, notes"
                        + " together are a chord. If not given, patterns and harmony decide.");
    }

    /** Returns what the user calls the part; null if patterns decide. */
    static @Nullable String of(CommandLine line) throws UsageException {
        String part = line.getOptionValue(LEFT_HAND_PART);
        if (part != null && line.hasOption(PatternOption.PATTERN)) {
            throw new UsageException(
                    "--left-hand-part leaves nothing for --pattern to decide.\n  Maybe leave one out.");
        }
        return part;
    }
}
