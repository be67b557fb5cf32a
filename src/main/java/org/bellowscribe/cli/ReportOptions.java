package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.bellowscribe.batch.ReportFolder;
import org.bellowscribe.batch.Source;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;
import org.jspecify.annotations.Nullable;

/** Pages to look at and listen to. */
final class ReportOptions {

    private static final int MOST_REASONS = 1000;

    static final CommandOption<Path> REPORT = new CommandOption<>(
                    "report",
                    "DIR",
                    "Write a page for each tune to look at and listen to, and an index of them; without --out nothing else is"
                            + " written.",
                    new FilePath())
            .in(OptionGroup.BESIDES);
    static final CommandOption<Integer> REASONS = new CommandOption<>(
                    "report-reasons",
                    "N",
                    "With --report: of N notes of each tune say what every other way to play them would cost, those with air"
                            + " first; none if not given.",
                    new WholeNumber(0, MOST_REASONS))
            .in(OptionGroup.BESIDES);

    static final List<CommandOption<?>> ALL = List.of(REPORT, REASONS);

    private ReportOptions() {}

    /** Returns true if the line needs no folder for scores: it only asks, or wants pages alone. */
    static boolean writesNoScore(CommandWords words) {
        return (SteeringOptions.asks(words) || words.has(REPORT))
                && !words.has(FileOptions.OUT)
                && !words.has(FileOptions.IN_PLACE)
                && !FileOptions.isPiped(words);
    }

    /** Refuses what is written beside scores where none are written. */
    static void requireFolder(CommandWords words, CommandOption<?> option) throws UsageException {
        if (writesNoScore(words) && words.has(option)) {
            throw new UsageException("--%s needs a folder.%n  Maybe add --out and a folder.".formatted(option.name()));
        }
    }

    /** Returns the folder of the report; null if none is wanted. */
    static @Nullable ReportFolder folder(CommandWords words, List<Source> sources) throws UsageException {
        Path folder = path(words);
        return folder == null ? null : new ReportFolder(folder, sources, choice(words, "", source -> List.of()));
    }

    /** Returns where the report of a line goes; null if none is wanted. */
    static @Nullable Path path(CommandWords words) throws UsageException {
        Path folder = words.get(REPORT);
        if (folder == null && words.has(REASONS)) {
            throw new UsageException("--%s stands on the pages of a report.%n  Maybe add --%s and a folder."
                    .formatted(REASONS.name(), REPORT.name()));
        }
        return folder;
    }

    /** Returns what a line wants on its pages. */
    static ReportFolder.Choice choice(CommandWords words, String below, Function<Source, List<String>> news) {
        return new ReportFolder.Choice(words.get(REASONS, 0), below, news);
    }
}
