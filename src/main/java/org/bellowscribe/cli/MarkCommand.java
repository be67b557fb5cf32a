package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.batch.Jobs;
import org.bellowscribe.batch.Outputs;
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
        boolean asks = SteeringOptions.onlyAsks(words);
        Terminal terminal = asks ? given : FileOptions.speaking(words, given);
        return new BatchRun(words, sources, terminal).run(Jobs.mark(settings, outputs), report(words, !asks));
    }

    private Report report(CommandWords words, boolean writes) {
        boolean needsPins = SteeringOptions.usesPinsBeside(words);
        return words.has(FileOptions.JSON)
                ? new JsonReport(name(), needsPins, new JsonReport.Extra() {})
                : new MarkReport(writes, needsPins);
    }

    private static Sources sources(CommandWords words, Outputs outputs, Terminal terminal) throws UsageException {
        for (CommandOption<?> needsFiles : OutputOptions.BESIDE) {
            FileOptions.refuseWithPipe(words, needsFiles);
            SteeringOptions.requireFolder(words, needsFiles);
        }
        if (SteeringOptions.onlyAsks(words)) {
            return FileOptions.toRead(words, terminal);
        }
        Wanted.Beside all = new Wanted.Beside(outputs.endings(), SteeringOptions.alternatives(words));
        return FileOptions.toMark(words, file -> all, terminal);
    }
}
