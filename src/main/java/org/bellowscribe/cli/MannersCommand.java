package org.bellowscribe.cli;

import java.util.List;
import java.util.Map;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Shows manners of playing. */
final class MannersCommand extends LibraryCommand<Manner> {

    MannersCommand() {
        super(MannerLibrary.library());
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the manners of playing; show tells what each rule charges in one of them, or"
                + " in a manner file; check looks for what is wrong in a file; learn finds points under which marks come out"
                + " that somebody made.";
    }

    @Override
    public String usage() {
        return "[list | show ID|FILE | check FILE | learn INPUT... --out FILE]";
    }

    @Override
    public List<CommandOption<?>> options() {
        return LearnOptions.ALL;
    }

    @Override
    public Map<String, List<String>> firstWords() {
        Map<String, List<String>> words = super.firstWords();
        words.put(LearnAction.NAME, List.of());
        return words;
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        List<String> rest = words.rest();
        return !rest.isEmpty() && rest.get(0).equals(LearnAction.NAME)
                ? LearnAction.run(rest.subList(1, rest.size()), words, terminal)
                : super.run(words, terminal);
    }

    @Override
    String list() {
        return MannerTable.list();
    }

    @Override
    String show(Manner shown) {
        return MannerTable.show(shown);
    }

    @Override
    String title(Manner shown) {
        return shown.id();
    }
}
