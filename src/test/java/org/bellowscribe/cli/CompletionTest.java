package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.cli.completion.Shell;
import org.bellowscribe.cli.option.CommandOption;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What shells make of the scripts of {@code completion}, in the shells themselves where they are installed. */
class CompletionTest {

    @TempDir
    Path folder;

    private static final String FILES = "samples/book/two-ducks.musicxml";

    private Path script(Shell shell) throws IOException {
        return Files.writeString(
                folder.resolve("script." + shell.id()),
                CommandRun.of("completion", shell.id()).out());
    }

    private String printed(Shell shell, String... arguments) throws IOException, InterruptedException {
        boolean installed = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(place -> Files.isExecutable(Path.of(place, shell.id())));
        Assumptions.assumeTrue(installed, shell.id() + " is not installed: what it completes is not tried");
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder process = new ProcessBuilder(
                Stream.concat(Stream.of(shell.id()), Arrays.stream(arguments)).toList());
        process.environment().put("HOME", folder.toString());
        assertEquals(
                0,
                process.redirectOutput(out.toFile())
                        .redirectError(err.toFile())
                        .start()
                        .waitFor(),
                Files.readString(err));
        assertEquals("", Files.readString(err));
        return Files.readString(out, StandardCharsets.UTF_8);
    }

    private List<String> bash(String line) throws IOException, InterruptedException {
        String run = "source \"$1\"; shift; COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1)); _bellowscribe;"
                + " printf '%s\\n' \"${COMPREPLY[@]}\"";
        List<String> words =
                List.of("--norc", "-c", run, "bash", script(Shell.BASH).toString());
        String[] all = Stream.concat(words.stream(), Arrays.stream(line.split(" ", -1)))
                .toArray(String[]::new);
        return sorted(printed(Shell.BASH, all));
    }

    private List<String> fish(String line) throws IOException, InterruptedException {
        String run = "source %s; complete -C%s".formatted(script(Shell.FISH), "'" + line + "'");
        String out = printed(Shell.FISH, "--no-config", "-c", run);
        return sorted(out.replaceAll("(?m)\\t.*$", ""));
    }

    private static List<String> sorted(String lines) {
        return List.copyOf(
                new TreeSet<>(lines.lines().filter(line -> !line.isEmpty()).toList()));
    }

    @ParameterizedTest
    @CsvSource({
        "bellowscribe stri, strip",
        "bellowscribe mark --instr, --instrument",
        "bellowscribe mark --times '', again once",
        "bellowscribe mark --instrument dg-21-f, dg-21-fourth-button",
        "'bellowscribe mark --marks direction,chord-s', 'direction,chord-symbols'",
        "bellowscribe styles sh, show",
        "bellowscribe styles show ger, german",
        "bellowscribe completion fi, fish",
        "bellowscribe mark samples/book/two-d, " + FILES,
    })
    void bashAndFishOfferWhatIsDeclared(String line, String offered) throws IOException, InterruptedException {
        String typed = line.replace("''", "");
        List<String> expected = List.of(offered.split(" "));
        assertEquals(expected, bash(typed));
        assertEquals(expected, fish(typed));
    }

    @Test
    void bashKnowsValuesBehindTheSignOfEquality() throws IOException, InterruptedException {
        assertEquals(List.of("german"), bash("bellowscribe mark --style = ger"));
    }

    @Test
    void foldersAreOfferedForFolders() throws IOException, InterruptedException {
        assertEquals(List.of("samples"), bash("bellowscribe mark --out sample"));
        assertEquals(List.of("samples/"), fish("bellowscribe mark --out sample"));
    }

    @ParameterizedTest
    @CsvSource({
        "bellowscribe stri, 'bellowscribe strip '",
        "bellowscribe mark --times=on, 'bellowscribe mark --times=once '",
        "bellowscribe mark --times on, 'bellowscribe mark --times once '",
        "'bellowscribe mark --marks direction,chord-s', 'bellowscribe mark --marks direction,chord-symbols'",
        "bellowscribe styles sh, 'bellowscribe styles show '",
        "bellowscribe styles show ger, 'bellowscribe styles show german '",
        "bellowscribe mark samples/book/two-d, 'bellowscribe mark samples/book/two-ducks.musicxml '",
    })
    void zshCompletesWhatIsTyped(String line, String completed) throws IOException, InterruptedException {
        String typist =
                Path.of("src/test/resources/org/bellowscribe/cli/complete.zsh").toString();
        String script = script(Shell.ZSH).toString();
        String told = folder.resolve("told").toString();
        assertEquals(completed + "\n", printed(Shell.ZSH, "-f", typist, script, told, line));
    }

    /** PowerShell is not at hand where this was written: only what its script holds is seen here. */
    @ParameterizedTest
    @EnumSource(Shell.class)
    void everyScriptHasEveryOptionAndTheNamesOfTheLibraries(Shell shell) {
        String script = CommandRun.of("completion", shell.id()).out();
        for (Command command : Commands.ALL) {
            assertTrue(script.contains(command.name()), command.name());
            for (CommandOption<?> option : command.options()) {
                String sign = shell == Shell.FISH ? "-l " : "--";
                assertTrue(script.contains(sign + option.name()), option.name());
            }
        }
        StyleLibrary.library().ids().forEach(id -> assertTrue(script.contains(id), id));
    }

    @Test
    void aShellThatIsNotKnownIsRefused() {
        CommandRun run = CommandRun.of("completion", "sh");
        assertEquals(2, run.code());
        assertTrue(
                run.err().startsWith("completion takes the name of one shell: bash | zsh | fish | powershell."),
                run.err());
    }
}
