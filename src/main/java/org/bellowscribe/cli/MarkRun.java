package org.bellowscribe.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.bellowscribe.batch.Jobs;
import org.bellowscribe.batch.Keeping;
import org.bellowscribe.batch.ReportFolder;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.jspecify.annotations.Nullable;

/**
 * One run of {@code mark}: what its line, its settings files and its inputs say now.
 *
 * @param words the line
 * @param plans how each tune is marked
 * @param sources the tunes
 * @param pages where pages to look at go; null if none are wanted
 * @param stray what settings files say of tunes that are not there
 */
record MarkRun(
        CommandWords words,
        MarkPlans plans,
        Sources sources,
        @Nullable ReportFolder pages,
        List<Sources.Problem> stray) {

    /**
     * Reads settings and finds the scores.
     *
     * @throws UsageException if the line or a settings file is wrong; then nothing was done
     */
    static MarkRun plan(CommandWords words, Terminal terminal) throws UsageException {
        KeepingOptions.require(words);
        MarkPlans plans = new MarkPlans(words);
        Sources sources = find(words, plans, terminal);
        plans.require();
        SteeringOptions.requireOneTune(words, sources.found().size());
        boolean asksForNotes = words.has(FileOptions.JSON) || !words.has(FileOptions.QUIET);
        List<Path> asked = asksForNotes ? StrayExceptions.folders(words) : List.of();
        return new MarkRun(
                words, plans, sources, ReportOptions.folder(words, sources.found()), plans.strayExceptions(asked));
    }

    private static Sources find(CommandWords words, MarkPlans plans, Terminal terminal) throws UsageException {
        FileOptions.refuseWithPipe(words, SettingsOption.PRINT_SETTINGS, ReportOptions.REPORT);
        for (CommandOption<?> needsFiles : OutputOptions.BESIDE) {
            FileOptions.refuseWithPipe(words, needsFiles);
            ReportOptions.requireFolder(words, needsFiles);
        }
        if (FileOptions.isPiped(words)) {
            Sources piped = FileOptions.toMark(words, plans::beside, terminal);
            plans.planPiped(piped.found().get(0));
            return piped;
        }
        if (ReportOptions.writesNoScore(words) || words.has(SettingsOption.PRINT_SETTINGS)) {
            return FileOptions.toLookAt(words, plans::beside, terminal);
        }
        return FileOptions.toMark(words, plans::beside, terminal);
    }

    /** Returns this run of some of its scores only, and without what is wrong with its inputs. */
    MarkRun only(Set<Path> scores) {
        return new MarkRun(words, plans, sources.only(scores), pages, List.of());
    }

    /** Returns what becomes of results that stand already. */
    Keeping keeping() {
        return ReportOptions.writesNoScore(words) ? Keeping.ANSWER : KeepingOptions.of(words);
    }

    /** Marks the tunes and reports. */
    ExitCode run(Keeping keeping, Report report, Terminal given) {
        boolean onlyAnswers = ReportOptions.writesNoScore(words) && !words.has(ReportOptions.REPORT);
        Terminal terminal = onlyAnswers ? given : FileOptions.speaking(words, given);
        ExitCode code = new PagesRun(
                        pages,
                        plans.usual().settings().instrument().name(),
                        words.has(FileOptions.JSON) ? terminal.withoutOut() : terminal)
                .run(
                        report,
                        told -> new BatchRun(words, sources, terminal)
                                .telling(stray)
                                .run(Jobs.mark(source -> plans.of(source).with(pages), keeping), told));
        Diagnostic trouble = keeping.tidy();
        if (trouble != null) {
            terminal.remark(String.valueOf(words.get(FileOptions.OUT)), trouble);
        }
        if (keeping.writes()) {
            sources.removeLeftovers(Instant.now());
        }
        return code;
    }
}
