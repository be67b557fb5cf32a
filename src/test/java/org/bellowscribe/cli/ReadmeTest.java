package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/** The README says what the tool does, and no more. */
class ReadmeTest {

    private static final String README = read("README.md");
    private static final String NOTICE = read("src/main/resources/META-INF/NOTICE");

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Set<String> found(String pattern, String text) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    @Test
    void everyMessageHasAnAnchorAndNoOther() {
        Set<String> codes = Arrays.stream(DiagnosticCode.values())
                .map(DiagnosticCode::id)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(codes, found("<a id=\"([a-z-]+)\"></a>`\\1`", README));
    }

    @Test
    void everyOptionIsListedAndNoOther() {
        Set<String> options = new TreeSet<>(Set.of("help", "version"));
        for (Command command : Commands.ALL) {
            command.options().stream().map(CommandOption::name).forEach(options::add);
        }
        String ofTheTool = README.lines()
                .filter(line -> !line.strip().startsWith("mvn") && !line.strip().startsWith("#SBATCH"))
                .collect(Collectors.joining("\n"));
        assertEquals(options, found("--([a-z][a-z-]*)", ofTheTool));
    }

    @Test
    void everyCommandIsNamed() {
        for (Command command : Commands.ALL) {
            assertTrue(
                    README.contains("`" + command.name() + " ") || README.contains("`" + command.name() + "`"),
                    command.name());
        }
    }

    @Test
    void defaultsAndStylesAreNamed() {
        assertTrue(README.contains("`" + InstrumentLibrary.DEFAULT_ID + "`"));
        MannerLibrary.ids().forEach(id -> assertTrue(README.contains("`" + id + "`"), id));
        StyleLibrary.all().forEach(style -> assertTrue(README.contains("`" + style.id() + "`"), style.id()));
    }

    @Test
    void exitCodesAreThoseOfTheHelp() {
        String line = Help.text()
                .lines()
                .filter(each -> each.startsWith("Exit codes:"))
                .findFirst()
                .orElseThrow();
        assertTrue(README.contains(line), line);
    }

    @Test
    void caveatIsThatOfTheHelp() {
        for (String text : List.of(README, Help.text())) {
            String words = text.replaceAll("\\s+", " ");
            assertTrue(words.contains("Never force the bellows"), words);
            assertTrue(words.contains("stop and ask a teacher or a health professional"), words);
        }
    }

    @Test
    void bothCommandsForTheImpatientStandAboveTheFirstHeading() {
        String top = README.substring(0, README.indexOf("\n## "));
        assertTrue(
                top.contains(
                        "mvn -q -DskipTests package && java -jar target/bellowscribe.jar mark samples/book --out target/marked"));
        assertTrue(top.contains("mvn -B verify"));
    }

    @Test
    void filesThatAreNamedExist() {
        found("`((?:samples|schemas|shared)[a-z0-9./-]*)`", README + read("DEVELOPERS.md"))
                .forEach(path -> assertTrue(Files.exists(Path.of(path)), path));
    }

    @Test
    void noticeNamesEveryLibraryOfThePomWithItsVersion() {
        Matcher dependency = Pattern.compile(
                        "<dependency><groupId>[^<]+</groupId><artifactId>([^<]+)</artifactId><version>([^<]+)</version>(.*)")
                .matcher(read("pom.xml").replaceFirst("(?s)<dependencyManagement>.*?</dependencyManagement>", ""));
        int libraries = 0;
        while (dependency.find()) {
            if (!dependency.group(3).contains("<scope>test</scope>")) {
                assertTrue(NOTICE.contains(" " + dependency.group(2) + ","), dependency.group(1));
                libraries++;
            }
        }
        assertTrue(libraries >= 6, libraries + " libraries");
    }

    @Test
    void optionsOfMarkStandUnderTheHeadingsOfTheHelp() {
        int begin = README.indexOf("| `mark INPUT... --out DIR` | |");
        String table = README.substring(begin, README.indexOf("\n\n", begin));
        List<String> headings = new ArrayList<>();
        for (String row : table.lines().skip(2).toList()) {
            if (row.startsWith("| **")) {
                headings.add(row.replaceAll("\\| \\*\\*(.*)\\*\\* \\| \\|", "$1"));
                continue;
            }
            String heading = headings.get(headings.size() - 1);
            for (CommandOption<?> option : MarkOptions.all()) {
                if (row.split(" \\| ")[0].contains("`--" + option.name().concat(option.hasValue() ? " " : "`"))) {
                    assertEquals(option.group().heading(), heading, row);
                }
            }
        }
        assertEquals(
                MarkOptions.all().stream()
                        .map(option -> option.group().heading())
                        .distinct()
                        .toList(),
                headings);
    }
}
