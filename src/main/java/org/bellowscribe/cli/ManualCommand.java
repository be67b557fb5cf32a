package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.cli.completion.ManualPage;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;

/** Prints the manual page. */
final class ManualCommand implements Command {

    @Override
    public String name() {
        return "manual";
    }

    @Override
    public String summary() {
        return "Prints the manual page, for man: all commands with all options.";
    }

    @Override
    public String usage() {
        return "";
    }

    @Override
    public List<CommandOption<?>> options() {
        return List.of();
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        if (!words.rest().isEmpty()) {
            throw new UsageException("manual takes nothing more, but %d are given."
                    .formatted(words.rest().size()));
        }
        List<String> closing = List.of(HelpPage.INPUT, HelpPage.EXIT_CODES, HelpPage.CAUTION);
        terminal.out().print(ManualPage.of(Commands.described(), ToolVersion.name(), closing));
        return ExitCode.ALL_DONE;
    }
}
