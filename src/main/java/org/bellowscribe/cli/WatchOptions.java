package org.bellowscribe.cli;

import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;

/** Marking again whenever something is saved. */
final class WatchOptions {

    static final CommandOption<Boolean> WATCH = CommandOption.flag(
                    "watch",
                    "Mark, then wait, and mark again whatever is saved: scores, pins, settings and files that options name;"
                            + " Ctrl-C ends it.")
            .in(OptionGroup.RUN);

    private WatchOptions() {}

    /** Refuses what does not go together. */
    static void require(CommandWords words) throws UsageException {
        FileOptions.refuseWithPipe(words, WATCH);
        for (CommandOption<?> option : new CommandOption<?>[] {
            KeepingOptions.DRY_RUN, KeepingOptions.CHECK, KeepingOptions.FORCE, SettingsOption.PRINT_SETTINGS
        }) {
            if (words.has(option)) {
                throw new UsageException(
                        "--watch marks what changes, and --%s does not go with that.%n  Maybe leave one out."
                                .formatted(option.name()));
            }
        }
        if (words.rest().contains("@-")) {
            throw new UsageException("--watch reads its inputs again and again, and @- can be read once."
                    + "%n  Maybe put the list into a file.".formatted());
        }
        if (ReportOptions.writesNoScore(words)) {
            throw new UsageException("--watch needs a place for results.%n  Maybe add --out and a folder.".formatted());
        }
    }
}
