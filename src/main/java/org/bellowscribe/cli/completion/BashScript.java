package org.bellowscribe.cli.completion;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.cli.option.CommandOption;

/** Completion for bash 3.2 and later; needs no other scripts. */
final class BashScript {

    private static final String HEAD = """
            # Completion of bellowscribe for bash: source this file, or put it where bash-completion looks.
            _bellowscribe_words() {
                COMPREPLY+=($(compgen -W "$1" -- "$cur"))
            }
            _bellowscribe_list() {
                local before="" last=$cur word
                if [[ $cur == *,* ]]; then
                    before=${cur%,*},
                    last=${cur##*,}
                fi
                for word in $(compgen -W "$1" -- "$last"); do
                    COMPREPLY+=("$before$word")
                done
                compopt -o nospace 2>/dev/null
            }
            _bellowscribe_files() {
                local file
                compopt -o filenames 2>/dev/null
                while IFS= read -r file; do COMPREPLY+=("$file"); done < <(compgen "$1" -- "$cur")
            }
            _bellowscribe() {
                local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]}
                COMPREPLY=()
                # Bash takes the sign of --option=value for a word.
                if [[ $cur == = ]]; then
                    cur=""
                elif [[ $prev == = ]]; then
                    prev=${COMP_WORDS[COMP_CWORD-2]}
                fi
            """;

    private final StringBuilder text = new StringBuilder(HEAD);

    private BashScript() {}

    static String of(List<DescribedCommand> commands) {
        BashScript script = new BashScript();
        script.commands(commands);
        script.values(commands);
        script.options(commands);
        script.line("}").line("complete -F _bellowscribe bellowscribe");
        return script.text.toString();
    }

    private BashScript line(String line) {
        text.append(line).append('\n');
        return this;
    }

    private void commands(List<DescribedCommand> commands) {
        String names = commands.stream().map(DescribedCommand::name).collect(Collectors.joining(" "));
        line("    if ((COMP_CWORD == 1)); then");
        line("        _bellowscribe_words '" + names + " --help --version'");
        line("        return");
        line("    fi");
    }

    private void values(List<DescribedCommand> commands) {
        line("    case \"$command $prev\" in");
        for (DescribedCommand command : commands) {
            for (CommandOption<?> option : command.options()) {
                if (option.hasValue()) {
                    value("'" + command.name() + " --" + option.name() + "'", OfferedValues.of(option));
                }
            }
            for (Map.Entry<String, List<String>> first : command.firstWords().entrySet()) {
                value(
                        "'" + command.name() + " " + first.getKey() + "'",
                        new OfferedValues(first.getValue(), false, true, false));
            }
        }
        line("    esac");
    }

    private void value(String pattern, OfferedValues offered) {
        line("        " + pattern + ")");
        if (!offered.words().isEmpty()) {
            line("            _bellowscribe_" + (offered.list() ? "list" : "words") + " '" + offered.line() + "'");
        }
        if (offered.files() || offered.folders()) {
            line("            _bellowscribe_files " + (offered.folders() ? "-d" : "-f"));
        }
        line("            return");
        line("            ;;");
    }

    private void options(List<DescribedCommand> commands) {
        line("    if [[ $cur == -* ]]; then");
        line("        case $command in");
        for (DescribedCommand command : commands) {
            String names = command.options().stream()
                    .map(option -> "--" + option.name() + " ")
                    .collect(Collectors.joining());
            line("            " + command.name() + ") _bellowscribe_words '" + names + "--help' ;;");
        }
        line("        esac");
        line("        return");
        line("    fi");
        line("    if ((COMP_CWORD == 2)); then");
        line("        case $command in");
        for (DescribedCommand command : commands) {
            if (!command.firstWords().isEmpty()) {
                String first = String.join(" ", command.firstWords().keySet());
                line("            " + command.name() + ") _bellowscribe_words '" + first + "'; return ;;");
            }
        }
        line("        esac");
        line("    fi");
        line("    _bellowscribe_files -f");
    }
}
