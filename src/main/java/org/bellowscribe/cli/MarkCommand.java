package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.batch.Keeping;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Marks tunes. */
final class MarkCommand implements Command {

    @Override
    public String name() {
        return "mark";
    }

    @Override
    public String summary() {
        return "Decides how to play each tune and writes the marks into a copy of its score.";
    }

    @Override
    public String usage() {
        return "INPUT... --out DIR";
    }

    @Override
    public List<CommandOption<?>> options() {
        return MarkOptions.all();
    }

    @Override
    public void addTo(HelpPage page) {
        page.paragraph(HelpPage.INPUT);
        page.heading("Marks");
        for (Annotator annotator : Annotators.all()) {
            page.entry(annotator.id() + (annotator.byDefault() ? " *" : ""), annotator.summary());
        }
        page.entry("", "* written unless --marks says otherwise");
        page.heading("Styles");
        StyleLibrary.all().forEach(style -> page.entry(style.id(), style.name()));
        page.heading("Manners of playing");
        MannerLibrary.all().forEach(manner -> page.entry(manner.id(), manner.summary()));
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        if (words.rest().stream().anyMatch(Sources::isBook)) {
            return new BookRun(words, FileOptions.speaking(words, terminal)).run();
        }
        if (words.has(WatchOptions.WATCH)) {
            WatchOptions.require(words);
            return Watch.until(words, terminal);
        }
        if (words.has(SettingsOption.PRINT_SETTINGS) && words.has(FileOptions.JSON)) {
            throw new UsageException(
                    "--%s prints lines for people, and --%s lines for programs.%n  Maybe leave one out."
                            .formatted(SettingsOption.PRINT_SETTINGS.name(), FileOptions.JSON.name()));
        }
        MarkRun run = MarkRun.plan(words, terminal);
        if (words.has(SettingsOption.PRINT_SETTINGS)) {
            return PrintedSettings.print(run, terminal);
        }
        Keeping keeping = run.keeping();
        return run.run(keeping, report(run, keeping), terminal);
    }

    private Report report(MarkRun run, Keeping keeping) {
        CommandWords words = run.words();
        boolean needsPins = SteeringOptions.usesPinsBeside(words);
        if (words.has(FileOptions.JSON)) {
            return new JsonReport(name(), needsPins, new JsonReport.Extra() {});
        }
        if (keeping.mode() == Keeping.Mode.FORETELL || keeping.mode() == Keeping.Mode.COMPARE) {
            return new StandingReport(needsPins);
        }
        boolean asksForGrades = run.sources().found().stream()
                .anyMatch(source -> run.plans().of(source).outputs().grades().told());
        boolean showsUnchanged = run.sources().found().size() == 1 || words.has(FileOptions.VERBOSE) || asksForGrades;
        return new MarkReport(written(words), needsPins, showsUnchanged);
    }

    private static MarkReport.Written written(CommandWords words) {
        if (!ReportOptions.writesNoScore(words)) {
            return MarkReport.Written.SCORES;
        }
        return words.has(ReportOptions.REPORT) ? MarkReport.Written.PAGES : MarkReport.Written.NOTHING;
    }
}
