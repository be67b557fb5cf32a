package org.bellowscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsMargin;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.explain.Alternatives;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/** README.md and DEVELOPERS.md say no number, source, measurement or class that is not there. */
class DocumentsTest {

    private static final Pattern SOURCE = Pattern.compile("\\b(S\\d{1,2}|W\\d{3})\\b");
    private static final Pattern MEASURE = Pattern.compile("@Tag\\(\"([a-z-]+)\"\\)");

    /** Named in DEVELOPERS.md, not of ours: a class of alphaTab, and the example of a rule. */
    private static final Set<String> NOT_OURS = Set.of("LyricsGlyph", "StickingButton");

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Returns the files below folders that hold text of ours. */
    private static List<Path> texts(String... folders) throws IOException {
        List<Path> texts = new ArrayList<>();
        for (String folder : folders) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                files.filter(file -> file.toString().matches(".*\\.(java|xml|xsd|txt|json)"))
                        .forEach(texts::add);
            }
        }
        return texts;
    }

    private static Set<String> found(Pattern pattern, String text) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static String section(String heading) {
        String text = read(Path.of("DEVELOPERS.md"));
        int start = text.indexOf("# " + heading + "\n");
        assertTrue(start >= 0, heading);
        int end = text.indexOf("\n#", start);
        return text.substring(start, end < 0 ? text.length() : end);
    }

    /** Returns the one number of README.md that a pattern finds. */
    private static int number(String pattern) {
        Set<String> found = found(Pattern.compile(pattern), read(Path.of("README.md")));
        assertEquals(1, found.size(), pattern + " finds " + found);
        return Integer.parseInt(found.iterator().next().replace(",", ""));
    }

    @Test
    void everySourceThatIsNamedIsInTheListAndNoOther() throws IOException {
        Set<String> named = new TreeSet<>();
        texts("src", "shared", "schemas").forEach(file -> named.addAll(found(SOURCE, read(file))));
        StringBuilder keys = new StringBuilder();
        for (String line : section("Sources").lines().toList()) {
            keys.append(line.startsWith("| ") ? line.split("\\|", -1)[1] : "");
        }
        assertEquals(named, found(SOURCE, keys.toString()));
    }

    @Test
    void everyMeasurementIsInTheListAndNoOther() throws IOException {
        Set<String> tags = new TreeSet<>();
        texts("src/test/java", "src/browser/java", "src/jmh/java")
                .forEach(file -> tags.addAll(found(MEASURE, read(file))));
        assertEquals(tags, found(Pattern.compile("(?m)^\\| `([a-z-]+)` \\|"), section("Measurements")));
    }

    @Test
    void everyTestThatIsNamedIsThere() {
        Set<String> tests =
                found(Pattern.compile("`((?:[a-z]+/)+[A-Z][A-Za-z]+)`"), section("Tests") + section("Measurements"));
        tests.forEach(test -> assertTrue(
                Stream.of("src/test/java", "src/browser/java")
                        .anyMatch(root -> Files.exists(Path.of(root, "org/bellowscribe", test + ".java"))),
                test));
        assertTrue(tests.size() > 15, tests.toString());
    }

    @Test
    void everyClassThatDevelopersAreSentToIsThere() throws IOException {
        Set<String> named = found(
                Pattern.compile("`(?:[a-z]+[./])*([A-Z][a-z]\\w*)(?:\\.[A-Za-z]+)?(?:\\(\\))?`"),
                read(Path.of("DEVELOPERS.md")));
        Set<String> classes = new TreeSet<>(NOT_OURS);
        for (Path file : texts("src")) {
            classes.add(file.getFileName().toString().replace(".java", ""));
        }
        assertTrue(named.size() > 100, named.toString());
        named.removeAll(classes);
        assertEquals(Set.of(), named);
    }

    @Test
    void pointsOfUnlikeMeasuresAreThoseOfTheTable() {
        int points = MannerLibrary.of(MannerLibrary.DEFAULT_ID)
                .byRule()
                .getOrDefault("unlike-measure", Points.NONE)
                .of("each");
        assertEquals(points, number("costs (\\d+) points \\(rule `unlike-measure`\\)"));
    }

    @Test
    void limitsAreThoseOfTheTool() {
        assertEquals(ScoreDocument.MAX_BYTES >> 20, number("Files over (\\d+) MB"));
        assertEquals(Alternatives.CLEARLY, number("each with at least (\\d+) percent of the notes"));
        assertEquals(Alternatives.MOST, number("write up to K \\(`(\\d+)` at most\\)"));
        assertEquals(BellowsMargin.MOST, number("stays unused; `0` to `(\\d+)`"));
    }

    @Test
    void reserveAtTheEndsIsThatOfTheUsualBox() throws DiagnosedException {
        int reserve = (int) Math.round(100
                * InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID).bellows().reserve());
        assertEquals(reserve, number("\\(`(\\d+)` to `\\d+` on the usual box\\)"));
        assertEquals(100 - reserve, number("\\(`\\d+` to `(\\d+)` on the usual box\\)"));
    }
}
