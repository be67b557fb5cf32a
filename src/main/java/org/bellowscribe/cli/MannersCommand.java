package org.bellowscribe.cli;

import java.util.List;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Shows manners of playing. */
final class MannersCommand implements Command {

    private static final List<String> ACTIONS = List.of("list", "show");

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
        List<String> words = line.getArgList();
        String action = words.isEmpty() ? "list" : words.get(0);
        if (!ACTIONS.contains(action)) {
            List<String> near = NearestNames.of(action, ACTIONS);
            throw new UsageException("manners does not know %s.%n  Maybe %s is meant."
                    .formatted(action, String.join(" or ", near.isEmpty() ? ACTIONS : near)));
        }
        int names = Math.max(0, words.size() - 1);
        if (names != (action.equals("show") ? 1 : 0)) {
            throw new UsageException("%s takes %s, but %d are given."
                    .formatted(action, action.equals("show") ? "one manner" : "nothing more", names));
        }
        terminal.out()
                .print(
                        action.equals("list")
                                ? MannerTable.list()
                                : MannerTable.show(MarkCommand.look(words.get(1), "manner", MannerLibrary::find)));
        return ExitCode.ALL_DONE;
    }
}
