package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.PlainText;

/** Which options hold for which tunes, and where they come from. */
final class PrintedSettings {

    private static final String LINE = "  %-18s %-28s %s";

    private PrintedSettings() {}

    /** Prints them, tunes for which the same holds together. */
    static ExitCode print(MarkRun run, Terminal terminal) throws UsageException {
        Sources sources = run.sources();
        Map<List<String>, List<String>> tunes = new LinkedHashMap<>();
        for (Source source : sources.found()) {
            tunes.computeIfAbsent(lines(run.words(), run.plans().origins(source.file())), any -> new ArrayList<>())
                    .add(PlainText.line(source.shown()));
        }
        tunes.forEach((lines, names) -> {
            String others = names.size() == 1 ? "" : " and %d more".formatted(names.size() - 1);
            terminal.out().println(names.get(0) + others);
            lines.forEach(terminal.out()::println);
        });
        terminal.out().println("What is not named is as mark --help says.");
        Stream.concat(sources.problems().stream(), run.stray().stream())
                .forEach(problem -> terminal.remark(problem.input(), problem.diagnostic()));
        return sources.problems().isEmpty() ? ExitCode.ALL_DONE : ExitCode.SOME_FAILED;
    }

    private static List<String> lines(CommandWords words, Map<String, SettingsFiles.Value> values) {
        List<String> lines = new ArrayList<>();
        for (CommandOption<?> option : MarkOptions.ofTunes()) {
            String given = words.text(option);
            SettingsFiles.Value value = values.get(option.name());
            if (given != null) {
                lines.add(LINE.formatted(
                        option.name(), option.hasValue() ? given : SettingsFile.YES, "the command line"));
            } else if (value != null) {
                lines.add(LINE.formatted(option.name(), value.text(), value.from()));
            }
        }
        return lines.isEmpty() ? List.of("  all as usual") : List.copyOf(lines);
    }
}
