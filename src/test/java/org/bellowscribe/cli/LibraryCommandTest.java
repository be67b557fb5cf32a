package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands about libraries all work alike. */
class LibraryCommandTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"instruments, dg-21", "styles, two-lines", "manners, learner", "patterns, jig"})
    void listsItsLibraryWithOrWithoutTheWord(String command, String id) {
        CommandRun run = CommandRun.of(command);
        assertEquals(0, run.code());
        assertTrue(run.out().contains("  " + id + " "), run.out());
        assertEquals(run, CommandRun.of(command, "list"));
    }

    @ParameterizedTest
    @CsvSource({"instruments, dg-21", "styles, two-lines", "manners, learner", "patterns, jig"})
    void showsOne(String command, String id) {
        CommandRun run = CommandRun.of(command, "show", id);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains(id) || command.equals("instruments"), run.out());
        assertEquals("", run.err());
    }

    @ParameterizedTest
    @CsvSource({
        "instruments, dg21, dg-21",
        "styles, tow-lines, two-lines",
        "manners, lerner, learner",
        "patterns, jg, jig"
    })
    void offersTheNearestNameForOneThatIsNot(String command, String wrong, String near) {
        CommandRun run = CommandRun.of(command, "show", wrong);
        assertEquals(2, run.code());
        String thing = command.substring(0, command.length() - 1);
        assertEquals(
                "%s: error [unknown-name] The library has no %s %s.%n  Maybe %s.%n  The command %s list shows all.%n"
                        .formatted(wrong, thing, wrong, near, command),
                run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"instruments", "styles", "manners", "patterns"})
    void checksAFile(String command) throws IOException {
        Path file = folder.resolve("wrong.xml");
        Files.writeString(file, "<nonsense/>");
        CommandRun run = CommandRun.of(command, "check", file.toString());
        assertEquals(1, run.code(), run.err());
        assertTrue(run.err().contains("wrong.xml: line 1, column "), run.err());
        assertTrue(CommandRun.of(command, "check").err().contains("check takes one file, but 0 are given."));
    }

    @Test
    void saysThatAFileCanBeUsed() throws IOException {
        Path file = folder.resolve("mine.xml");
        Files.writeString(file, "<style id=\"mine\" name=\"Mine\"/>");
        CommandRun run = CommandRun.of("styles", "check", file.toString());
        String inherited = """
                Not set, so as in parentheses, in English:
                  style: filler, language, lines
                  buttons: all
                  left-hand: all
                  words: all
                  rows: all
                  spoken: all
                  legend: all
                  practice: all
                  book: all
                """;
        assertEquals(new CommandRun(0, file + ": mine can be used; 0 doubts.\n" + inherited, ""), run);
    }

    @Test
    void showsTheSignsOfAStyleOfOnesOwn() throws IOException {
        Path file = folder.resolve("mine.xml");
        Files.writeString(file, "<style id=\"mine\" name=\"Mine\"><buttons pull=\"{buttons}z\"/></style>");
        CommandRun run = CommandRun.of("styles", "show", file.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().lines().anyMatch(line -> line.matches(" +\\d+z +pulled")), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"instruments", "styles", "manners", "patterns"})
    void aFolderIsNoFile(String command) {
        CommandRun run = CommandRun.of(command, "show", folder + "/.");
        assertEquals(1, run.code(), run.err());
        assertTrue(run.err().contains("cannot be read (it is a folder)"), run.err());
    }
}
