package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.batch.Jobs;
import org.bellowscribe.batch.Outputs;
import org.bellowscribe.batch.ReportFolder;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.batch.Wanted;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.marking.MarkSettings;
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
    public ExitCode run(CommandWords words, Terminal given) throws UsageException {
        if (words.rest().stream().anyMatch(Sources::isBook)) {
            return new BookRun(words, given).run();
        }
        MarkSettings settings = MarkOptions.settings(words);
        Outputs outputs = OutputOptions.of(words);
        Sources sources = sources(words, outputs, given);
        SteeringOptions.requireOneTune(words, sources.found().size());
        Terminal terminal = ReportOptions.writesNoScore(words) ? given : FileOptions.speaking(words, given);
        ReportFolder report =
                ReportOptions.folder(words, sources.found(), outputs.grades().grading());
        return new PagesRun(report, settings.instrument().name(), terminal)
                .run(
                        report(words),
                        told -> new BatchRun(words, sources, terminal)
                                .run(Jobs.mark(settings, outputs.with(report)), told));
    }

    private Report report(CommandWords words) {
        boolean needsPins = SteeringOptions.usesPinsBeside(words);
        return words.has(FileOptions.JSON)
                ? new JsonReport(name(), needsPins, new JsonReport.Extra() {})
                : new MarkReport(written(words), needsPins);
    }

    private static MarkReport.Written written(CommandWords words) {
        if (!ReportOptions.writesNoScore(words)) {
            return MarkReport.Written.SCORES;
        }
        return words.has(ReportOptions.REPORT) ? MarkReport.Written.PAGES : MarkReport.Written.NOTHING;
    }

    private static Sources sources(CommandWords words, Outputs outputs, Terminal terminal) throws UsageException {
        FileOptions.refuseWithPipe(words, ReportOptions.REPORT);
        for (CommandOption<?> needsFiles : OutputOptions.BESIDE) {
            FileOptions.refuseWithPipe(words, needsFiles);
            ReportOptions.requireFolder(words, needsFiles);
        }
        if (ReportOptions.writesNoScore(words)) {
            return FileOptions.toRead(words, terminal);
        }
        Wanted.Beside all = new Wanted.Beside(outputs.endings(), SteeringOptions.alternatives(words));
        return FileOptions.toMark(words, file -> all, terminal);
    }
}
