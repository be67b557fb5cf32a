package org.bellowscribe.cli.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bellowscribe.cli.option.CommandOption;

/** Completion for zsh, by its own {@code _arguments}. */
final class ZshScript {

    private static final String HEAD = """
            #compdef bellowscribe
            # Completion of bellowscribe for zsh: a file _bellowscribe in a folder of fpath, or sourced after compinit.
            _bellowscribe_words() {
                compadd -- ${=1}
            }
            _bellowscribe_list() {
                compset -P '*,'
                compadd -S '' -- ${=1}
            }
            """;

    private final StringBuilder text = new StringBuilder(HEAD);

    private ZshScript() {}

    static String of(List<DescribedCommand> commands) {
        ZshScript script = new ZshScript();
        commands.forEach(script::command);
        script.line("_bellowscribe() {")
                .line("    local curcontext=$curcontext state line")
                .line("    if ((CURRENT == 2)); then")
                .line("        local -a commands=(");
        for (DescribedCommand command : commands) {
            String entry = command.name() + ":" + ShellWords.brief(command.summary());
            script.line("            " + ShellWords.quoted(entry));
        }
        script.line("        )")
                .line("        _describe command commands")
                .line("        compadd -- --help --version")
                .line("        return")
                .line("    fi")
                .line("    local command=$words[2]")
                .line("    shift words")
                .line("    ((CURRENT--))")
                .line("    (($+functions[_bellowscribe_command_$command])) && _bellowscribe_command_$command")
                .line("}")
                .line("if [[ $zsh_eval_context[-1] == loadautofunc ]]; then _bellowscribe \"$@\";"
                        + " else compdef _bellowscribe bellowscribe; fi");
        return script.text.toString();
    }

    private ZshScript line(String line) {
        text.append(line).append('\n');
        return this;
    }

    private void command(DescribedCommand command) {
        line("_bellowscribe_command_" + command.name() + "() {");
        for (Map.Entry<String, List<String>> first : command.firstWords().entrySet()) {
            line("    if [[ $words[2] == " + first.getKey() + " ]] && ((CURRENT == 3)); then");
            if (!first.getValue().isEmpty()) {
                line("        _bellowscribe_words " + ShellWords.quoted(String.join(" ", first.getValue())));
            }
            line("        _files");
            line("        return");
            line("    fi");
        }
        List<String> specs = new ArrayList<>();
        command.options().forEach(option -> specs.add(ShellWords.quoted(spec(option))));
        specs.add("'--help[List the options]'");
        if (!command.firstWords().isEmpty()) {
            specs.add(ShellWords.quoted("1:what:{_bellowscribe_words \""
                    + String.join(" ", command.firstWords().keySet()) + "\"}"));
        }
        specs.add("'*:input:_files'");
        line("    _arguments \\");
        line("        " + String.join(" \\\n        ", specs));
        line("}");
    }

    private static String spec(CommandOption<?> option) {
        String help = escaped(ShellWords.brief(option.help()));
        if (!option.hasValue()) {
            return "--" + option.name() + "[" + help + "]";
        }
        OfferedValues offered = OfferedValues.of(option);
        List<String> actions = new ArrayList<>();
        if (!offered.words().isEmpty()) {
            actions.add(
                    (offered.list() ? "_bellowscribe_list" : "_bellowscribe_words") + " \"" + offered.line() + "\"");
        }
        if (offered.files() || offered.folders()) {
            actions.add(offered.folders() ? "_files -/" : "_files");
        }
        String action = actions.isEmpty() ? " " : "{" + String.join("; ", actions) + "}";
        return "--" + option.name() + "=[" + help + "]:" + escaped(option.argument()) + ":" + action;
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace("[", "\\[")
                .replace("]", "\\]")
                .replace(":", "\\:");
    }
}
