package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo book under each set of options, saved by MuseScore 3 and marked again: nothing doubled, nothing lost, and what is
 * stripped is what the program makes of the score without marks. Of the five programs of {@link Renderers} only MuseScore
 * saves MusicXML.
 */
@Tag("notation-program")
class RoundTripTest {

    private static final Path BOOK = Path.of("samples", "book");

    /** Where things are drawn, which marks change: widths, places, pages, and the day on which the file was saved. */
    private static final List<String> DRAWN = List.of(
            " (width|default-x|default-y|relative-x|relative-y)=\"[^\"]*\"",
            "<print[^>]*/>|<print[^>]*>[\\s\\S]*?</print>",
            "<encoding-date>[^<]*</encoding-date>",
            "<supports [^>]*>",
            "<(page|staff|system)-(layout|margins)[^>]*>[\\s\\S]*?</\\1-\\2>",
            "\\s+");

    private static final Pattern LENGTHS = Pattern.compile("<(divisions|duration|offset)>(-?\\d+)<");

    @TempDir
    private Path folder;

    @Test
    void marksSurviveANotationProgram() throws IOException, InterruptedException {
        assumeTrue(
                Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                        .anyMatch(each -> Files.isExecutable(Path.of(each, "mscore3"))),
                "mscore3 is not installed");
        Path plain = folder.resolve("plain");
        save(BOOK, plain);
        List<String> faults = new ArrayList<>();
        for (int set = 0; set < MarkedSets.withRows().size(); set++) {
            Path of = folder.resolve("set-" + set);
            mark(BOOK, of.resolve("first"), set);
            save(of.resolve("first"), of.resolve("saved"));
            mark(of.resolve("saved"), of.resolve("again"), set);
            mark(of.resolve("saved"), of.resolve("kept"), set, "--keep-edits");
            CommandRun.of(
                    "strip",
                    of.resolve("again").toString(),
                    "--out",
                    of.resolve("stripped").toString());
            compare(of, "set " + set, plain, faults);
        }
        assertEquals("", String.join("\n", faults));
    }

    private static void compare(Path of, String set, Path plain, List<String> faults) throws IOException {
        for (Path first : scores(of.resolve("first"))) {
            String name = first.getFileName().toString();
            String again = read(of, "again", name);
            String where = set + ": " + name;
            check(where + " marked again", marks(Files.readString(first)), marks(again), faults);
            check(where + " with --keep-edits", again, read(of, "kept", name), faults);
            check(
                    where + " stripped",
                    bare(Files.readString(plain.resolve(name))),
                    bare(read(of, "stripped", name)),
                    faults);
        }
    }

    private static String read(Path of, String folder, String name) throws IOException {
        Path file = of.resolve(folder).resolve(name);
        return Files.exists(file) ? Files.readString(file) : "";
    }

    private static void check(String what, String expected, String actual, List<String> faults) {
        if (!expected.equals(actual)) {
            int at = 0;
            while (at < Math.min(expected.length(), actual.length()) && expected.charAt(at) == actual.charAt(at)) {
                at++;
            }
            faults.add("%s differs at %d: ...%s... became ...%s..."
                    .formatted(what, at, near(expected, at), near(actual, at)));
        }
    }

    private static String near(String text, int at) {
        return text.substring(Math.max(0, Math.min(text.length(), at) - 60), Math.min(text.length(), at + 60));
    }

    // Texts of lyrics, words and fingers with how often each is there.
    private static String marks(String score) {
        Map<String, Integer> counts = new TreeMap<>();
        Pattern.compile("<(text|words|fingering)[^>/]*>([^<]+)<")
                .matcher(score)
                .results()
                .forEach(
                        each -> counts.merge(each.group(1) + " " + each.group(2).strip(), 1, Integer::sum));
        return counts.toString();
    }

    // The program writes lengths in the divisions that the whole score needs, a part with the left hand among it.
    private static String bare(String score) {
        int[] divisions = {1};
        String bare = LENGTHS.matcher(score).replaceAll(each -> {
            int value = Integer.parseInt(each.group(2));
            if (each.group(1).equals("divisions")) {
                divisions[0] = value;
                return "";
            }
            return Fraction.of(value, divisions[0]).toString();
        });
        for (String drawn : DRAWN) {
            bare = bare.replaceAll(drawn, "");
        }
        return bare;
    }

    private static void mark(Path from, Path to, int set, String... more) {
        List<String> words =
                new ArrayList<>(List.of("mark", from.toString(), "--transpose", "auto", "--out", to.toString()));
        words.addAll(MarkedSets.withRows().get(set));
        words.addAll(List.of(more));
        CommandRun.of(words.toArray(String[]::new));
    }

    private static List<Path> scores(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    private void save(Path from, Path to) throws IOException, InterruptedException {
        Files.createDirectories(to);
        String job = scores(from).stream()
                .map(score -> "{\"in\": \"%s\", \"out\": \"%s\"}"
                        .formatted(score.toAbsolutePath(), to.resolve(score.getFileName())))
                .collect(Collectors.joining(",\n", "[", "]"));
        Path file = Files.writeString(folder.resolve("job.json"), job);
        ProcessBuilder program = new ProcessBuilder("mscore3", "-j", file.toString());
        program.environment().put("QT_QPA_PLATFORM", "offscreen");
        program.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        assertEquals(0, program.start().waitFor());
    }
}
