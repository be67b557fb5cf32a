package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Shows manners of playing. */
final class MannersCommand implements Command {

    @Override
    public String name() {
        return "manners";
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the manners of playing; show tells what each rule charges in one of them, or"
                + " in a manner file.";
    }

    @Override
    public String usage() {
        return "[list | show ID|FILE]";
    }

    @Override
    public Options options() {
        return new Options();
    }

    @Override
    public ExitCode run(CommandLine line, Terminal terminal) throws UsageException {
        String shown = ListOrShow.shown(line, name(), "manner");
        terminal.out()
                .print(
                        shown == null
                                ? MannerTable.list()
                                : MannerTable.show(MarkCommand.look(shown, "manner", MannerLibrary::find)));
        return ExitCode.ALL_DONE;
    }
}
