package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkCommandTest {

    private static final String SCALE = "D4 E4 F#4 G4 A4 B4 C#5 D5";

    @TempDir
    Path folder;

    private String out() {
        return folder.resolve("out").toString();
    }

    private String marked(String name) throws IOException {
        return Files.readString(folder.resolve("out").resolve(name));
    }

    /** Every file below a folder with its bytes as text of one byte a character. */
    private static Map<String, String> files(Path root) throws IOException {
        Map<String, String> files = new TreeMap<>();
        List<Path> paths;
        try (Stream<Path> below = Files.walk(root)) {
            paths = below.filter(Files::isRegularFile)
                    .filter(path -> !path.getFileName().toString().startsWith("."))
                    .toList();
        }
        for (Path path : paths) {
            files.put(
                    root.relativize(path).toString(),
                    Files.readString(path, java.nio.charset.StandardCharsets.ISO_8859_1));
        }
        return files;
    }

    @Test
    void tuneIsMarkedAndToldInOneLine() throws IOException {
        CommandRun run = CommandRun.of("mark", ScoreText.file(folder.resolve("scale.xml"), SCALE), "--out", out());
        assertEquals(0, run.code(), run.err());
        String[] lines = run.out().split("\\R");
        assertTrue(lines[0].matches("tune +measures +reversals +air +start +cost +proof"), lines[0]);
        assertTrue(lines[1].matches("scale +2 +\\d+ +\\d+ +\\d+ % +\\d+ +least"), lines[1]);
        assertTrue(run.out().contains("1 tune marked, 0 not marked"), run.out());
        assertTrue(marked("scale.xml").contains("<lyric "));
    }

    @Test
    void marksAreThoseAskedFor() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.xml"), SCALE);
        assertEquals(
                0,
                CommandRun.of("mark", scale, "--out", out(), "--marks", "fingers, opening")
                        .code());
        assertFalse(marked("scale.xml").contains("<lyric "));
        assertTrue(marked("scale.xml").contains("<fingering>"));
        assertTrue(marked("scale.xml").contains("open"));
    }

    @Test
    void oneBadTuneStopsNoOther() throws IOException {
        ScoreText.file(folder.resolve("in/a-scale.xml"), SCALE);
        ScoreText.write(folder.resolve("in/b-broken.musicxml"), "<score-partwise><part>");
        ScoreText.file(folder.resolve("in/c-scale.xml"), SCALE);
        CommandRun run = CommandRun.of("mark", folder + "/in", "--out", out());
        assertEquals(1, run.code());
        assertEquals(
                List.of("a-scale.xml", "c-scale.xml"),
                List.copyOf(files(folder.resolve("out")).keySet()));
        assertTrue(run.out().contains("2 tunes marked, 1 not marked"), run.out());
        assertTrue(run.out().contains("[not-xml]: 1\n  " + folder + "/in/b-broken.musicxml\n"), run.out());
        assertTrue(run.err().contains("b-broken.musicxml: line 1"), run.err());
    }

    /** Some samples that are soon decided, and one that is refused; all of them in {@code MarkingLawsTest}. */
    @Test
    void oneAndFourThreadsGiveTheSame() throws IOException {
        List<CommandRun> runs = new ArrayList<>();
        List<Map<String, String>> results = new ArrayList<>();
        for (String threads : List.of("1", "4")) {
            Path target = folder.resolve("out");
            runs.add(CommandRun.of(
                    "mark",
                    "samples/book/{dots,eel,frost,nine,out,reeds,two}-*.musicxml",
                    "samples/refused",
                    "--record",
                    "--out",
                    target.toString(),
                    "--threads",
                    threads));
            results.add(files(target));
            Files.move(target, folder.resolve("done" + threads));
        }
        assertEquals(runs.get(0), runs.get(1));
        assertEquals(results.get(0), results.get(1));
        assertEquals(15, results.get(0).size(), results.get(0).keySet().toString());
    }

    @Test
    void markingAgainChangesNothing() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.xml"), SCALE);
        CommandRun.of("mark", scale, "--out", folder + "/once");
        CommandRun.of("mark", folder + "/once/scale.xml", "--out", folder + "/twice");
        assertEquals(files(folder.resolve("once")), files(folder.resolve("twice")));
    }

    @Test
    void strippingGivesTheBytesBack() throws IOException {
        CommandRun.of("mark", "samples/book/two-ducks.musicxml", "--out", folder + "/marked");
        CommandRun run = CommandRun.of("strip", folder + "/marked", "--out", folder + "/bare");
        assertEquals(0, run.code(), run.err());
        assertArrayEquals(
                Files.readAllBytes(Path.of("samples", "book", "two-ducks.musicxml")),
                Files.readAllBytes(folder.resolve("bare/two-ducks.musicxml")));
    }

    @Test
    void inPlaceTheFileItselfIsMarkedAndStripped() throws IOException {
        Path scale = folder.resolve("scale.xml");
        String name = ScoreText.file(scale, SCALE);
        String before = Files.readString(scale);
        assertEquals(0, CommandRun.of("mark", name, "--in-place").code());
        assertTrue(Files.readString(scale).contains("<lyric "));
        assertEquals(0, CommandRun.of("strip", name, "--in-place").code());
        assertEquals(before, Files.readString(scale));
        assertEquals(List.of("scale.xml"), List.copyOf(files(folder).keySet()));
    }

    @Test
    void recordStandsBesideTheScore() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.musicxml"), SCALE);
        CommandRun.of("mark", scale, "--record", "--out", out());
        Object tuneRecord = JsonTree.read(marked("scale.record.json"));
        assertEquals("scale.musicxml", JsonTree.get(tuneRecord, "file"));
        assertEquals("marked", JsonTree.get(tuneRecord, "outcome"));
        assertEquals(8, ((List<?>) JsonTree.get(tuneRecord, "steps")).size());
    }

    @Test
    void refusedTuneHasARecordButNoScore() throws IOException {
        String flat = ScoreText.file(folder.resolve("flat.xml"), "D4 F4 D4 F4");
        assertEquals(1, CommandRun.of("mark", flat, "--record", "--out", out()).code());
        assertEquals(
                List.of("flat.record.json"),
                List.copyOf(files(folder.resolve("out")).keySet()));
        assertEquals("refused", JsonTree.get(JsonTree.read(marked("flat.record.json")), "outcome"));
    }

    @Test
    void tuneOfRestsHasNothingToMark() throws IOException {
        String rests = ScoreText.file(folder.resolve("rests.xml"), "r r r r");
        assertEquals(1, CommandRun.of("mark", rests, "--record", "--out", out()).code());
        assertEquals("nothing-to-mark", JsonTree.get(JsonTree.read(marked("rests.record.json")), "outcome"));
    }

    @Test
    void quietKeepsNotesBack() throws IOException {
        String score = ScoreText.of("scale", SCALE).replace("<sound tempo=\"120\"/>", "");
        String scale = ScoreText.write(folder.resolve("scale.xml"), score);
        assertTrue(CommandRun.of("mark", scale, "--out", out()).err().contains("note [assumed]"));
        assertEquals("", CommandRun.of("mark", scale, "--out", out(), "--quiet").err());
    }

    @Test
    void tuneThatClosesTheBellowsIsMarkedForOneTimeOnlyWhenAsked() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.xml"), SCALE);
        CommandRun.of("mark", scale, "--times", "once", "--record", "--out", out());
        Object bellows = JsonTree.get(JsonTree.read(marked("scale.record.json")), "bellows");
        assertEquals(false, JsonTree.get(bellows, "again"));
    }

    @Test
    void orderOfPlayStandsUnderTheLineOfATuneWithRepeats() throws IOException {
        String repeat = "<barline location=\"right\"><repeat direction=\"backward\"/></barline>    </measure>";
        String score = ScoreText.of("twice", SCALE).replaceFirst(" *</measure>", repeat);
        String twice = ScoreText.write(folder.resolve("twice.xml"), score);
        String[] lines = CommandRun.of("mark", twice, "--out", out()).out().split("\\R");
        assertEquals("  measures 1, 1, 2", lines[2]);
        String scale = ScoreText.file(folder.resolve("scale.xml"), SCALE);
        assertFalse(CommandRun.of("mark", scale, "--out", out()).out().contains("  measures 1"));
    }

    @Test
    void partIsTheOneAskedFor() throws IOException {
        String one = ScoreText.of("two", SCALE);
        String second = one.substring(one.indexOf("<part id="), one.indexOf("</part>") + 7);
        String two = one.replace(
                        "</part-list>", "<score-part id=\"P2\"><part-name>Low</part-name></score-part></part-list>")
                .replace("</part>\n", "</part>\n" + second.replace("P1", "P2") + "\n");
        String file = ScoreText.write(folder.resolve("two.xml"), two);
        CommandRun chosen = CommandRun.of("mark", file, "--out", out());
        assertTrue(chosen.err().contains("melody is read from part P1 (Melody), staff 1, voice 1"), chosen.err());
        CommandRun asked = CommandRun.of("mark", file, "--out", out(), "--part", "low");
        assertFalse(asked.err().contains("melody is read"), asked.err());
        assertTrue(marked("two.xml").indexOf("<lyric ") > marked("two.xml").indexOf("<part id=\"P2\""));
        CommandRun unknown = CommandRun.of("mark", file, "--out", out(), "--part", "high");
        assertEquals(1, unknown.code());
        assertTrue(unknown.err().contains("error [unknown-name] The score has no part high."), unknown.err());
        assertTrue(unknown.err().contains("P1 (Melody), P2 (Low)"), unknown.err());
    }

    @Test
    void measuresOfTiedNotesAndRestsAreCountedToo() throws IOException {
        String file = ScoreText.file(folder.resolve("held.musicxml"), "D4 E4 F#4 G4 r r r r A4 A4 A4 A4 A4 A4 A4 A4");
        Files.writeString(Path.of(file), holdOver(Files.readString(Path.of(file))));
        CommandRun run = CommandRun.of("mark", file, "--out", folder + "/out");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().matches("(?s).*\\nheld +4 .*"), run.out());
        assertTrue(run.out().contains("; 4 measures,"), run.out());
    }

    // Ties all notes from measure 3 on into one.
    private static String holdOver(String score) {
        int third = score.indexOf("<measure number=\"3\"");
        String held = score.substring(third).replace("<type>", "<tie type=\"stop\"/><tie type=\"start\"/><type>");
        return score.substring(0, third) + held.replaceFirst("<tie type=\"stop\"/>", "");
    }

    @Test
    void recordsOfScoresWithOneNameButForTheEndingHaveNamesOfTheirOwn() throws IOException {
        String score = ScoreText.of("Tune", SCALE);
        ScoreText.write(folder.resolve("in/tune.musicxml"), score);
        ScoreText.write(folder.resolve("in/tune.xml"), score);
        CommandRun run = CommandRun.of("mark", folder + "/in", "--out", out(), "--record");
        assertEquals(0, run.code(), run.err());
        assertEquals(
                List.of("tune.musicxml", "tune.record.json", "tune.xml", "tune.xml.record.json"),
                List.copyOf(files(folder.resolve("out")).keySet()));
        assertEquals("tune.xml", JsonTree.get(JsonTree.read(marked("tune.xml.record.json")), "file"));
    }

    @Test
    void scoreOfOnesOwnIsNeverTakenForAnotherWayToPlay() throws IOException {
        String file = ScoreText.file(folder.resolve("tune.musicxml"), SCALE + " " + SCALE);
        String own = ScoreText.file(folder.resolve("tune.2.musicxml"), "A4 B4 A4 B4");
        String before = Files.readString(Path.of(own));
        CommandRun run = CommandRun.of("mark", file, "--in-place", "--alternatives", "2");
        assertEquals(1, run.code(), run.out());
        assertTrue(run.err().contains("tune.2.musicxml, which has no marks of ours."), run.err());
        assertEquals(before, Files.readString(Path.of(own)));
        assertFalse(Files.readString(Path.of(file)).contains("bellowscribe-"));
    }

    @Test
    void recordOfAScoreThatCouldNotBeWrittenSaysSo() throws IOException {
        String file = ScoreText.file(folder.resolve("tune.musicxml"), SCALE);
        Files.createDirectories(folder.resolve("out/tune.musicxml/occupied"));
        CommandRun run = CommandRun.of("mark", file, "--out", out(), "--record");
        assertEquals(1, run.code(), run.out());
        assertEquals("refused", JsonTree.get(JsonTree.read(marked("tune.record.json")), "outcome"));
    }
}
