package org.bellowscribe.cli.completion;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.cli.option.CommandOption;

/** Completion for PowerShell 5 and later. Where it offers nothing, the shell offers files. */
final class PowerShellScript {

    private static final String END = """
            Register-ArgumentCompleter -Native -CommandName bellowscribe -ScriptBlock {
                param($last, $line, $cursor)
                $words = @($line.CommandElements | Where-Object { $_.Extent.EndOffset -lt $cursor } | ForEach-Object { "$_" })
                if ($last -eq '' -and $words.Count -gt 0) { $before = $words } else { $before = @($words | Where-Object { $_ -ne $last }) }
                $key = ($before | Select-Object -Skip 1 | Select-Object -First 1)
                $previous = ($before | Select-Object -Last 1)
                if ($before.Count -le 1) { $offered = $offers[''] }
                elseif ($offers.ContainsKey("$key $previous")) { $offered = $offers["$key $previous"] }
                elseif ($last -like '-*') { $offered = $offers["$key -"] }
                elseif ($before.Count -eq 2) { $offered = $offers["$key"] }
                else { $offered = @() }
                $start = ''
                $piece = $last
                if ($last -match '^(.*,)([^,]*)$') { $start = $Matches[1]; $piece = $Matches[2] }
                $offered | Where-Object { $_ -like "$piece*" } | ForEach-Object {
                    [System.Management.Automation.CompletionResult]::new("$start$_", $_, 'ParameterValue', $_)
                }
            }
            """;

    private final StringBuilder text = new StringBuilder();

    private PowerShellScript() {}

    static String of(List<DescribedCommand> commands) {
        PowerShellScript script = new PowerShellScript();
        script.text.append("# Completion of bellowscribe for PowerShell: run this file from your profile.\n");
        script.text.append("$offers = @{\n");
        Stream<String> names = commands.stream().map(DescribedCommand::name);
        script.offer("", Stream.concat(names, Stream.of("--help", "--version")).toList());
        commands.forEach(script::command);
        script.text.append("}\n").append(END);
        return script.text.toString();
    }

    private void command(DescribedCommand command) {
        String name = command.name();
        if (!command.firstWords().isEmpty()) {
            offer(name, List.copyOf(command.firstWords().keySet()));
        }
        for (Map.Entry<String, List<String>> first : command.firstWords().entrySet()) {
            offer(name + " " + first.getKey(), first.getValue());
        }
        Stream<String> options = command.options().stream().map(option -> "--" + option.name());
        offer(name + " -", Stream.concat(options, Stream.of("--help")).toList());
        for (CommandOption<?> option : command.options()) {
            if (option.hasValue()) {
                offer(name + " --" + option.name(), OfferedValues.of(option).words());
            }
        }
    }

    private void offer(String key, List<String> words) {
        String list = words.stream().map(word -> "'" + word + "'").collect(Collectors.joining(", "));
        text.append("    '").append(key).append("' = @(").append(list).append(")\n");
    }
}
