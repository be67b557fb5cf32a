package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.batch.Keeping;
import org.bellowscribe.batch.Selection;
import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;

/** What to do with results that stand already. */
final class KeepingOptions {

    static final CommandOption<Boolean> FORCE = CommandOption.flag(
                    "force",
                    "Mark all tunes anew; if not given, only those whose score, pins, options or files of options changed.")
            .in(OptionGroup.RUN);
    static final CommandOption<Boolean> DRY_RUN = CommandOption.flag(
                    "dry-run", "Say what would be written and why; write nothing.")
            .in(OptionGroup.RUN);
    static final CommandOption<Boolean> CHECK = CommandOption.flag(
                    "check", "Write nothing, and end with exit code 1 if a result is not what it would be today.")
            .in(OptionGroup.RUN);
    static final CommandOption<Boolean> DIFF = CommandOption.flag(
                    "diff", "Say under each tune which marks are others than in the result before.")
            .in(OptionGroup.RUN);

    static final List<CommandOption<?>> ALL = List.of(FORCE, DRY_RUN, CHECK, DIFF);

    private KeepingOptions() {}

    /** Refuses what does not go together. */
    static void require(CommandWords words) throws UsageException {
        if (words.has(DRY_RUN) && words.has(CHECK)) {
            throw new UsageException("--dry-run and --check exclude each other.");
        }
        if (words.has(DRY_RUN) && words.has(DIFF)) {
            throw new UsageException(
                    "--diff has to decide the tunes, and --dry-run does not.%n  Maybe --check --diff, which writes nothing either."
                            .formatted());
        }
        for (CommandOption<?> option : ALL) {
            if (words.has(option) && ReportOptions.writesNoScore(words)) {
                throw new UsageException(
                        "--%s is about results, and a question alone has none.%n  Maybe add --out and a folder."
                                .formatted(option.name()));
            }
        }
        if (words.has(ReportOptions.REPORT) && (words.has(DRY_RUN) || words.has(CHECK))) {
            throw new UsageException("--%s writes pages, and --%s nothing."
                    .formatted(ReportOptions.REPORT.name(), words.has(CHECK) ? CHECK.name() : DRY_RUN.name()));
        }
        FileOptions.refuseWithPipe(words, FORCE, DRY_RUN, CHECK, DIFF);
    }

    /** Returns what the line asks for: pages are made of decisions, so that all are made anew; nothing is remembered without a folder for results. */
    static Keeping of(CommandWords words) {
        Path folder = words.get(FileOptions.OUT);
        Ledger ledger = folder == null ? null : Ledger.open(folder, share(words));
        return new Keeping(ledger, mode(words), words.has(FORCE) || words.has(ReportOptions.REPORT), words.has(DIFF));
    }

    private static String share(CommandWords words) {
        Selection.Share share = words.get(FileOptions.SHARD, Selection.Share.ALL);
        return share.of() == 1 ? "" : "-%d-of-%d".formatted(share.number(), share.of());
    }

    private static Keeping.Mode mode(CommandWords words) {
        if (words.has(DRY_RUN)) {
            return Keeping.Mode.FORETELL;
        }
        return words.has(CHECK) ? Keeping.Mode.COMPARE : Keeping.Mode.WRITE;
    }
}
