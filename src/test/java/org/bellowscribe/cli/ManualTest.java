package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.bellowscribe.cli.option.CommandOption;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The manual page. */
class ManualTest {

    @TempDir
    Path folder;

    @Test
    void everyCommandAndOptionHasItsEntry() {
        String page = CommandRun.of("manual").out().replace("\\-", "-").replace("\\(aq", "'");
        for (Command command : Commands.ALL) {
            assertTrue(page.contains("\n.B bellowscribe " + command.name() + "\n"), command.name());
            for (CommandOption<?> option : command.options()) {
                assertTrue(page.contains("\n.TP\n.B " + option.label() + "\n" + option.help()), option.label());
            }
        }
    }

    @Test
    void optionsOfMarkStandUnderTheHeadingsOfTheHelp() {
        String page = CommandRun.of("manual").out().replace("\\-", "-");
        String mark = page.substring(page.indexOf(".SH MARK\n"), page.indexOf(".SH STRIP\n"));
        assertTrue(mark.indexOf(".SS How it is played\n") < mark.indexOf("\n.B --manner "), mark);
        assertTrue(mark.indexOf("\n.B --manner ") < mark.indexOf(".SS What is printed\n"), mark);
        assertFalse(page.substring(page.indexOf(".SH STRIP\n")).contains(".SS"), page);
    }

    @Test
    void groffSetsItWithoutWarnings() throws IOException, InterruptedException {
        boolean installed = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(place -> Files.isExecutable(Path.of(place, "groff")));
        Assumptions.assumeTrue(installed, "groff is not installed: the page is not set");
        Path page = Files.writeString(
                folder.resolve("page.1"), CommandRun.of("manual").out());
        Path warnings = folder.resolve("warnings.txt");
        Path set = folder.resolve("set.txt");
        Process groff = new ProcessBuilder("groff", "-man", "-ww", "-Tascii", "-P-c", page.toString())
                .redirectOutput(set.toFile())
                .redirectError(warnings.toFile())
                .start();
        assertEquals(0, groff.waitFor());
        assertEquals("", Files.readString(warnings));
        assertTrue(Files.readString(set).contains("list (@FILE, one a line"), Files.readString(set));
    }

    @Test
    void itTakesNoWords() {
        assertEquals(2, CommandRun.of("manual", "mark").code());
    }
}
