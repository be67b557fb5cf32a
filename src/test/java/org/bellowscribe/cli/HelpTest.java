package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bellowscribe.cli.option.CommandOption;
import org.junit.jupiter.api.Test;

/** The help of the tool and of each command. */
class HelpTest {

    private static List<String> optionsIn(String help) {
        return help.lines()
                .map(String::strip)
                .filter(line -> line.startsWith("--"))
                .map(line -> line.split(" ")[0])
                .toList();
    }

    @Test
    void aCommandListsItsOwnOptionsAndNoOthers() {
        for (Command command : Commands.ALL) {
            CommandRun run = CommandRun.of(command.name(), "--help");
            assertEquals(0, run.code());
            assertEquals(
                    command.options().stream()
                            .map(option -> "--" + option.name())
                            .toList(),
                    optionsIn(run.out()));
        }
    }

    @Test
    void theToolListsItsCommands() {
        String help = CommandRun.of("--help").out();
        Commands.ALL.forEach(command -> assertTrue(help.contains("bellowscribe " + command.name()), help));
        assertEquals(List.of(), optionsIn(help));
    }

    @Test
    void noLineIsWiderThanAPageAndNoneEndsInSpaces() {
        Stream.concat(Stream.of("--help"), Commands.ALL.stream().map(Command::name))
                .flatMap(word -> CommandRun.of(word, "--help").out().lines())
                .forEach(line -> {
                    assertTrue(line.length() <= 100, line);
                    assertEquals(line.stripTrailing(), line);
                });
    }

    @Test
    void limitsInTheHelpAreThoseOfTheMessage() {
        for (Command command : Commands.ALL) {
            String help = CommandRun.of(command.name(), "--help").out().replaceAll("\\s+", " ");
            for (CommandOption<?> option : command.options()) {
                String limits = option.reader().limits();
                if (limits.isEmpty()) {
                    continue;
                }
                assertTrue(help.contains("Takes " + limits + "."), help);
                String err = CommandRun.of(command.name(), "x", "--" + option.name(), "!:!")
                        .err();
                assertTrue(err.startsWith("--%s takes %s, not !:!.".formatted(option.name(), limits)), err);
            }
        }
    }

    @Test
    void helpOfOneCommandIsNoHelpOfAll() {
        assertFalse(CommandRun.of("strip", "--help").out().contains("Manners of playing"));
        assertTrue(CommandRun.of("mark", "--help").out().contains("Manners of playing"));
    }

    @Test
    void optionsOfMarkStandUnderHeadingsInColumnsThatAreAlike() {
        List<String> lines = CommandRun.of("mark", "--help").out().lines().toList();
        String heading = "";
        Set<Integer> columns = new TreeSet<>();
        Set<String> headings = new LinkedHashSet<>();
        Iterator<CommandOption<?>> options = MarkOptions.all().iterator();
        for (String line : lines.subList(0, lines.indexOf("Marks"))) {
            if (!line.isBlank() && !line.startsWith(" ")) {
                heading = line;
            } else if (line.startsWith("  --")) {
                CommandOption<?> option = options.next();
                assertEquals(option.group().heading(), heading, line);
                headings.add(heading);
                columns.add(line.indexOf(
                        option.help().substring(0, 4), 4 + option.label().length()));
            }
        }
        assertEquals(
                List.of(
                        "What is marked",
                        "How it is played",
                        "What is printed",
                        "What is told and written besides",
                        "Where it goes",
                        "The run"),
                List.copyOf(headings));
        assertEquals(1, columns.size(), columns.toString());
    }

    @Test
    void aCommandWithFewOptionsListsThemUnderOneHeading() {
        String help = CommandRun.of("strip", "--help").out();
        assertTrue(help.contains("\nOptions\n"), help);
        assertFalse(help.contains("The run"), help);
    }
}
