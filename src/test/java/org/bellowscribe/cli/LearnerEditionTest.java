package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The demo book as a learner edition for two instruments: what its files say, and how long it takes. Runs with {@code
 * -Dmeasure=learner-edition} only; the figures go to {@code target/learner-edition.txt}. Last measured on a busy machine of
 * two cores, one thread, the best of three: edition 27.3 s, {@code mark} on the same
 * tunes 16.6 s, ratio 1.64.
 *
 * <p>That every sheet can be played is told by the tool itself, which refuses what its replay finds fault with, and by {@code
 * marking/StageLawsTest}.
 */
@Tag("learner-edition")
class LearnerEditionTest {

    private static final String BOOK = "samples/learner-edition.xml";
    private static final Map<String, String> BOXES = new TreeMap<>(Map.of("dg-21", "dg-21", "one-row-d", "d-10"));
    /** What stands in a line at a note of which it says nothing. */
    private static final String NOTHING = "·";

    private static final int ROUNDS = 3;
    private static final double MOST = 3;

    @TempDir
    static Path folder;

    private static CommandRun run;

    @BeforeAll
    static void markTheBook() {
        run = edition("first");
    }

    private static CommandRun edition(String name) {
        return CommandRun.of("mark", BOOK, "--out", folder.resolve(name).toString(), "--threads", "1");
    }

    private static List<Path> sheets(String box) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("first").resolve(box))) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    private static List<Path> tunes(String box) throws IOException {
        return sheets(box).stream().filter(file -> !stem(file).contains(".")).toList();
    }

    private static String stem(Path sheet) {
        return sheet.getFileName().toString().replace(".musicxml", "");
    }

    private static Path stage(Path tune, Stage stage) {
        return tune.resolveSibling(stem(tune) + "." + stage.id() + ".musicxml");
    }

    private static ScoreDocument read(Path sheet) throws Exception {
        return ScoreDocument.decode(Files.readAllBytes(sheet));
    }

    @Test
    void everyTuneHasAllItsStagesAndNothingIsWarnedOf() throws Exception {
        assertEquals(0, run.code(), run.err());
        assertTrue(!run.err().contains("warning") && !run.err().contains("error"), run.err());
        assertEquals(25, tunes("dg-21").size());
        assertEquals(19, tunes("one-row-d").size());
        for (String box : BOXES.keySet()) {
            for (Path tune : tunes(box)) {
                for (Stage stage : Stage.values()) {
                    assertTrue(Files.exists(stage(tune, stage)), tune + " " + stage);
                }
            }
        }
    }

    @Test
    void everyFileIsValid() throws Exception {
        for (String box : BOXES.keySet()) {
            for (Path sheet : sheets(box)) {
                assertEquals(List.of(), SchemaCheck.check(read(sheet).text()), sheet.toString());
            }
        }
    }

    @Test
    void takingTheMarksOutGivesTheScoreBack() throws Exception {
        for (String box : BOXES.keySet()) {
            for (Path tune : tunes(box)) {
                byte[] stripped = read(tune).withoutMarks().encode();
                if (box.equals("dg-21")) {
                    assertArrayEquals(
                            Files.readAllBytes(Path.of("samples", "book", stem(tune) + ".musicxml")), stripped);
                }
                for (Stage stage : Stage.values()) {
                    if (stage.isScoreWithMarks()) {
                        byte[] other = read(stage(tune, stage)).withoutMarks().encode();
                        assertArrayEquals(stripped, other, stage(tune, stage).toString());
                    }
                }
            }
        }
    }

    @Test
    void noStageContradictsAnother() throws Exception {
        List<String> contradictions = new ArrayList<>();
        int compared = 0;
        for (String box : BOXES.keySet()) {
            for (Path tune : tunes(box)) {
                SortedMap<String, String> whole = marks(tune);
                for (Stage stage : Stage.values()) {
                    if (!stage.isScoreWithMarks()) {
                        continue;
                    }
                    for (Map.Entry<String, String> mark :
                            marks(stage(tune, stage)).entrySet()) {
                        compared++;
                        if (!mark.getValue().equals(NOTHING) && !mark.getValue().equals(whole.get(mark.getKey()))) {
                            contradictions.add(stage(tune, stage) + " " + mark + " " + whole.get(mark.getKey()));
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), contradictions);
        assertTrue(compared > 10_000, compared + " compared");
    }

    /** Returns the numbers, letters and fingers at each note, by where they stand. */
    private static SortedMap<String, String> marks(Path sheet) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Element root = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(Files.readAllBytes(sheet)))
                .getDocumentElement();
        NodeList notes = root.getElementsByTagName("note");
        SortedMap<String, String> marks = new TreeMap<>();
        for (int i = 0; i < notes.getLength(); i++) {
            Element note = (Element) notes.item(i);
            NodeList lyrics = note.getElementsByTagName("lyric");
            for (int j = 0; j < lyrics.getLength(); j++) {
                Element lyric = (Element) lyrics.item(j);
                NodeList texts = lyric.getElementsByTagName("text");
                if (lyric.getAttribute("name").startsWith("bellowscribe-") && texts.getLength() == 1) {
                    marks.put(i + lyric.getAttribute("name"), texts.item(0).getTextContent());
                }
            }
            NodeList fingers = note.getElementsByTagName("fingering");
            for (int j = 0; j < fingers.getLength(); j++) {
                marks.put(i + " finger " + j, fingers.item(j).getTextContent());
            }
        }
        return marks;
    }

    @Test
    void theEditionTakesAtMostThreeTimesAsLongAsMarkOnTheSameTunes() throws Exception {
        double[] edition = new double[ROUNDS];
        double[] mark = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            int round = i;
            mark[i] = seconds(() -> {
                for (Map.Entry<String, String> box : BOXES.entrySet()) {
                    assertEquals(
                            0,
                            mark(box.getKey(), box.getValue(), "mark" + round).code());
                }
            });
            edition[i] =
                    seconds(() -> assertEquals(0, edition("edition" + round).code()));
        }
        double ratio = Arrays.stream(edition).min().orElseThrow()
                / Arrays.stream(mark).min().orElseThrow();
        String figures = String.format(
                Locale.ROOT,
                "edition %s s, mark %s s, ratio of the best %.2f%n",
                Arrays.toString(edition),
                Arrays.toString(mark),
                ratio);
        Files.writeString(Path.of("target", "learner-edition.txt"), figures);
        assertTrue(ratio <= MOST, figures);
    }

    /** Work that may fail. */
    @FunctionalInterface
    private interface Work {
        void run() throws IOException;
    }

    private static double seconds(Work work) throws IOException {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e9;
    }

    private static CommandRun mark(String box, String instrument, String name) throws IOException {
        List<String> words = new ArrayList<>(List.of("mark"));
        tunes(box).forEach(tune -> words.add("samples/book/" + stem(tune) + ".musicxml"));
        words.addAll(List.of("--instrument", instrument, "--manner", "learner", "--threads", "1"));
        words.addAll(List.of("--out", folder.resolve(name).resolve(box).toString()));
        if (box.equals("one-row-d")) {
            words.addAll(List.of("--transpose", "auto"));
        }
        return CommandRun.of(words.toArray(String[]::new));
    }
}
