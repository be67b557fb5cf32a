package org.bellowscribe.cli;

import java.time.Instant;
import java.util.List;
import org.bellowscribe.batch.Jobs;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;

/** Takes our marks out of scores. */
final class StripCommand implements Command {

    @Override
    public String name() {
        return "strip";
    }

    @Override
    public String summary() {
        return "Takes the marks out again and gives back the files as they were before.";
    }

    @Override
    public String usage() {
        return "INPUT... --out DIR";
    }

    @Override
    public List<CommandOption<?>> options() {
        return FileOptions.WRITING;
    }

    @Override
    public void addTo(HelpPage page) {
        page.paragraph(HelpPage.INPUT);
    }

    @Override
    public ExitCode run(CommandWords words, Terminal given) throws UsageException {
        Sources sources = FileOptions.toStrip(words, given);
        Report report = words.has(FileOptions.JSON)
                ? new JsonReport(name(), false, new JsonReport.Extra() {})
                : new StripReport();
        ExitCode code = new BatchRun(words, sources, FileOptions.speaking(words, given)).run(Jobs.strip(), report);
        sources.removeLeftovers(Instant.now());
        return code;
    }
}
