package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.batch.Jobs;
import org.bellowscribe.batch.Sources;

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
    public Options options() {
        Options options = new Options();
        FileOptions.addTo(options);
        return options;
    }

    @Override
    public ExitCode run(CommandLine line, Terminal terminal) throws UsageException {
        return FileOptions.run(line, Sources.ALL_THERE_ARE, Jobs.strip(), new StripReport(), terminal);
    }
}
