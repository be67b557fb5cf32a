package org.bellowscribe.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.cli.completion.Shell;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;

/** Prints a script with which a shell completes commands, options and their values. */
final class CompletionCommand implements Command {

    @Override
    public String name() {
        return "completion";
    }

    @Override
    public String summary() {
        return "Prints a script with which a shell completes commands, options and their values.";
    }

    @Override
    public String usage() {
        return String.join(" | ", firstWords().keySet());
    }

    @Override
    public List<CommandOption<?>> options() {
        return List.of();
    }

    @Override
    public Map<String, List<String>> firstWords() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        Arrays.stream(Shell.values()).forEach(shell -> words.put(shell.id(), List.of()));
        return words;
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        for (Shell shell : Shell.values()) {
            if (words.rest().equals(List.of(shell.id()))) {
                terminal.out().print(shell.script(Commands.described()));
                return ExitCode.ALL_DONE;
            }
        }
        throw new UsageException("completion takes the name of one shell: %s.".formatted(usage()));
    }
}
