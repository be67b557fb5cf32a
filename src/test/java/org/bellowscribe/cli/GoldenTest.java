package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bellowscribe.musicxml.SchemaCheck;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small scores with their marked result and all that is printed, and the laws of marking on each. With
 * {@code -Dgolden.update=true} what is expected is written anew: read the difference before it is kept.
 */
class GoldenTest {

    private static final boolean UPDATE = Boolean.getBoolean("golden.update");
    private static final String SCORE = "expected.musicxml";

    static List<Named<GoldenPair>> pairs() throws IOException {
        List<Named<GoldenPair>> pairs = new ArrayList<>();
        for (GoldenPair pair : GoldenPair.all()) {
            pairs.add(Named.of(pair.name() + ": " + pair.description(), pair));
        }
        return pairs;
    }

    @BeforeAll
    static void clean() throws IOException {
        Path work = Path.of("target", "golden");
        if (Files.exists(work)) {
            try (Stream<Path> files = Files.walk(work)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void resultIsTheExpectedAndKeepsTheLaws(GoldenPair pair) throws IOException {
        Map<String, String> marked = pair.marked();
        if (UPDATE) {
            pair.update(marked);
        }
        requireExpected(pair.expected(), marked);
        if (marked.containsKey(SCORE)) {
            assertEquals(findings(Files.readString(pair.score())), findings(marked.get(SCORE)), "against the schema");
            requireSameAgainWithTwoThreads(pair, marked.get(SCORE));
            requireNoTraceLeft(pair);
        } else {
            assertEquals(Set.of("expected.txt"), marked.keySet(), "files of a refused score");
        }
    }

    private static void requireExpected(Map<String, String> expected, Map<String, String> marked) {
        StringBuilder differences = new StringBuilder();
        Set<String> names = new TreeSet<>(expected.keySet());
        names.addAll(marked.keySet());
        for (String name : names) {
            List<String> before = lines(expected, name);
            List<String> after = lines(marked, name);
            UnifiedDiffUtils.generateUnifiedDiff(name, "now", before, DiffUtils.diff(before, after), 2)
                    .forEach(line -> differences.append(line).append('\n'));
        }
        if (!differences.isEmpty()) {
            fail("Not what is expected; -Dgolden.update=true takes it as it is now.\n" + differences);
        }
        assertEquals(expected, marked);
    }

    private static List<String> lines(Map<String, String> texts, String name) {
        return texts.containsKey(name) ? texts.get(name).lines().toList() : List.of();
    }

    private static int findings(String score) {
        return SchemaCheck.check(score).size();
    }

    /** Marked once more with the marked score as input, and beside it the first, on two threads. */
    private static void requireSameAgainWithTwoThreads(GoldenPair pair, String marked) throws IOException {
        Path marks = Files.createDirectories(pair.work("again"));
        Files.writeString(marks.resolve("marked.musicxml"), marked);
        List<String> words = new ArrayList<>(List.of("mark", marks + "/marked.musicxml"));
        boolean moved = pair.moves();
        if (!moved) {
            words.add(pair.work("in") + "/input.musicxml");
            words.addAll(pair.optionsForMany());
        }
        words.addAll(
                List.of("--threads", "2", "--quiet", "--out", pair.work("twice").toString()));
        pinsBeside(pair, marks);
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        assertEquals(marked, Files.readString(pair.work("twice").resolve("marked.musicxml")), "marked again");
        if (!moved) {
            assertEquals(marked, Files.readString(pair.work("twice").resolve("input.musicxml")), "on two threads");
        }
    }

    private static void pinsBeside(GoldenPair pair, Path marks) throws IOException {
        Path pins = pair.folder().resolve("input.pins.xml");
        if (Files.exists(pins)) {
            Files.copy(pins, marks.resolve("marked.pins.xml"));
        }
    }

    /** A score that was moved to another key comes back without marks, but moved. */
    private static void requireNoTraceLeft(GoldenPair pair) throws IOException {
        String bare = stripped(pair, pair.work("out") + "/input.musicxml", "bare");
        if (pair.moves()) {
            assertFalse(bare.contains("bellowscribe"), bare);
        } else {
            assertEquals(stripped(pair, pair.score().toString(), "first"), bare, "stripped");
        }
    }

    private static String stripped(GoldenPair pair, String score, String below) throws IOException {
        CommandRun run = CommandRun.of("strip", score, "--out", pair.work(below).toString());
        assertEquals(0, run.code(), run.err());
        return Files.readString(pair.work(below).resolve("input.musicxml"));
    }

    @Test
    void everyPairTellsInOneSentenceWhatItShowsAndNoOtherShowsIt() throws IOException {
        Set<String> told = new HashSet<>();
        List<GoldenPair> pairs = GoldenPair.all();
        for (GoldenPair pair : pairs) {
            assertTrue(pair.name().matches("\\d\\d-[a-z]+(-[a-z]+)*"), pair.name());
            assertTrue(pair.description().matches("[A-Z].*\\."), pair.name() + ": " + pair.description());
            assertTrue(told.add(pair.description()), pair.name());
        }
        assertTrue(pairs.size() >= 40, pairs.size() + " pairs");
    }
}
