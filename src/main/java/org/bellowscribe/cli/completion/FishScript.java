package org.bellowscribe.cli.completion;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.cli.option.CommandOption;

/** Completion for fish. */
final class FishScript {

    private static final String HEAD = """
            # Completion of bellowscribe for fish: a file of a folder of $fish_complete_path, or sourced.
            function __bellowscribe_list
                set -l before (commandline -ct | string replace -rf '^(?:--[^=]*=)?(.*,)[^,]*$' '$1')
                string join \\n -- $before$argv
            end
            function __bellowscribe_words_are
                set -l words (commandline -opc)
                set -e words[1]
                test "$words" = "$argv"
            end
            complete -c bellowscribe -n __fish_use_subcommand -f -l help -d 'List the commands'
            complete -c bellowscribe -n __fish_use_subcommand -f -l version -d 'Print the version'
            """;

    private final StringBuilder text = new StringBuilder(HEAD);

    private FishScript() {}

    static String of(List<DescribedCommand> commands) {
        FishScript script = new FishScript();
        commands.forEach(script::command);
        return script.text.toString();
    }

    private void line(String condition, String rest) {
        text.append("complete -c bellowscribe -n ")
                .append(quoted(condition))
                .append(' ')
                .append(rest)
                .append('\n');
    }

    private void command(DescribedCommand command) {
        String name = command.name();
        line("__fish_use_subcommand", "-f -a " + name + " -d " + quoted(ShellWords.brief(command.summary())));
        String seen = "__fish_seen_subcommand_from " + name;
        for (CommandOption<?> option : command.options()) {
            line(seen, "-l " + option.name() + value(option) + " -d " + quoted(ShellWords.brief(option.help())));
        }
        line(seen, "-l help -d 'List the options'");
        if (!command.firstWords().isEmpty()) {
            line("__bellowscribe_words_are " + name, "-f -a " + quoted(joined(command.firstWords())));
        }
        for (Map.Entry<String, List<String>> first : command.firstWords().entrySet()) {
            if (!first.getValue().isEmpty()) {
                line(
                        "__bellowscribe_words_are " + name + " " + first.getKey(),
                        "-a " + quoted(String.join(" ", first.getValue())));
            }
        }
    }

    private static String joined(Map<String, List<String>> words) {
        return words.keySet().stream().collect(Collectors.joining(" "));
    }

    private static String value(CommandOption<?> option) {
        if (!option.hasValue()) {
            return "";
        }
        OfferedValues offered = OfferedValues.of(option);
        String words = offered.folders() ? "(__fish_complete_directories)" : offered.line();
        if (offered.list() && !words.isEmpty()) {
            words = "(__bellowscribe_list " + words + ")";
        }
        // -r: takes a value; -f: which is no file.
        return " -r" + (offered.files() ? " -F" : " -f") + (words.isEmpty() ? "" : " -a " + quoted(words));
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
