package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.batch.Jobs;
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
    public ExitCode run(CommandWords words, Terminal given) throws UsageException {
        KeepingOptions.require(words);
        MarkPlans plans = new MarkPlans(words);
        Sources sources = sources(words, plans, given);
        plans.require();
        SteeringOptions.requireOneTune(words, sources.found().size());
        if (words.has(MarkOptions.PRINT_SETTINGS)) {
            return PrintedSettings.print(words, plans, sources, given);
        }
        boolean asks = SteeringOptions.onlyAsks(words);
        Keeping keeping = asks ? Keeping.ANSWER : KeepingOptions.of(words);
        Terminal terminal = asks ? given : FileOptions.speaking(words, given);
        ExitCode code = new BatchRun(words, sources, terminal)
                .run(
                        Jobs.mark(plans::of, keeping),
                        report(words, !asks, keeping, sources.found().size()));
        KeptRuns.tidy(keeping, terminal);
        return code;
    }

    private Report report(CommandWords words, boolean writes, Keeping keeping, int files) {
        boolean needsPins = SteeringOptions.usesPinsBeside(words);
        if (words.has(FileOptions.JSON)) {
            return new JsonReport(name(), needsPins, new JsonReport.Extra() {});
        }
        boolean looks = keeping.mode() == Keeping.Mode.FORETELL || keeping.mode() == Keeping.Mode.COMPARE;
        return looks
                ? new StandingReport(needsPins)
                : new MarkReport(writes, needsPins, files == 1 || words.has(FileOptions.VERBOSE));
    }

    private static Sources sources(CommandWords words, MarkPlans plans, Terminal terminal) throws UsageException {
        FileOptions.refuseWithPipe(words, MarkOptions.RECORD, SteeringOptions.ALTERNATIVES, MarkOptions.PRINT_SETTINGS);
        SteeringOptions.requireFolder(words, MarkOptions.RECORD);
        SteeringOptions.requireFolder(words, SteeringOptions.ALTERNATIVES);
        if (FileOptions.isPiped(words)) {
            Sources piped = FileOptions.toMark(words, plans::beside, terminal);
            plans.planPiped(piped.found().get(0));
            return piped;
        }
        if (SteeringOptions.onlyAsks(words) || words.has(MarkOptions.PRINT_SETTINGS)) {
            return FileOptions.toLookAt(words, plans::beside, terminal);
        }
        return FileOptions.toMark(words, plans::beside, terminal);
    }
}
