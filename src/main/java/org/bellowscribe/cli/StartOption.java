package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.instrument.Bellows;
import org.jspecify.annotations.Nullable;

/** How far open the bellows are at the start. */
final class StartOption {

    private static final String START_OPEN = "start-open";

    private StartOption() {}

    static void addTo(Options options) {
        ValueOption.add(
                options,
                START_OPEN,
                "PERCENT",
                "How far open the bellows are at the start, of the whole stroke, but for the ends, which are kept in"
                        + " reserve (8 to 92 on the usual box); where it is cheapest if not given.");
    }

    /** Returns a whole number of percent within the bellows, or null if any opening will do. */
    static @Nullable Integer of(CommandLine line, Bellows bellows) throws UsageException {
        String text = line.getOptionValue(START_OPEN);
        if (text == null) {
            return null;
        }
        int least = (int) Math.ceil(100 * bellows.lowest() / bellows.capacity());
        int most = (int) Math.floor(100 * bellows.highest() / bellows.capacity());
        boolean number = text.matches("\\d{1,3}");
        if (!number || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
            throw new UsageException("--%s takes a whole number of percent from %d to %d on these bellows, not %s."
                    .formatted(START_OPEN, least, most, text));
        }
        return Integer.valueOf(text);
    }
}
