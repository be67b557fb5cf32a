package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.cli.completion.DescribedCommand;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.NearestNames;

/** All commands, in the order in which to list them. */
final class Commands {

    static final List<Command> ALL = List.of(
            new MarkCommand(),
            new StripCommand(),
            new FitCommand(),
            new CompareCommand(),
            new BookCommand(),
            new CalibrateCommand(),
            new InstrumentsCommand(),
            new StylesCommand(),
            new MannersCommand(),
            new PatternsCommand(),
            new GradingsCommand(),
            new CompletionCommand(),
            new ManualCommand());

    private Commands() {}

    /** Returns all commands as their declarations tell them. */
    static List<DescribedCommand> described() {
        return ALL.stream()
                .map(command -> new DescribedCommand(
                        command.name(), command.usage(), command.summary(), command.options(), command.firstWords()))
                .toList();
    }

    /** Returns the command of a name. */
    static Command find(String name) throws UsageException {
        for (Command command : ALL) {
            if (command.name().equals(name)) {
                return command;
            }
        }
        List<String> names = ALL.stream().map(Command::name).toList();
        List<String> near = NearestNames.of(name, names);
        throw new UsageException("There is no command %s.%n  Maybe %s is meant."
                .formatted(name, String.join(" or ", near.isEmpty() ? names : near)));
    }
}
