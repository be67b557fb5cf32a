package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.report.JsonSchema;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code --json} prints: one object a line, as the schema says. */
class JsonLinesTest {

    private static final String GOOD = "D5 E5 F#5 G5 A5 B5 A5 G5";
    /** No button of the usual box gives G#4. */
    private static final String BAD = "D5 E5 F#5 G#4 A5 B5 A5 G5";

    @TempDir
    Path folder;

    private String book() throws IOException {
        ScoreText.write(folder.resolve("book/a.musicxml"), ScoreText.of("The Even One", GOOD));
        ScoreText.write(folder.resolve("book/b.musicxml"), ScoreText.of("The Odd One", BAD));
        return folder.resolve("book").toString();
    }

    private static List<Object> lines(CommandRun run) throws IOException {
        Object schema = JsonTree.read(Files.readString(Path.of("schemas", "run.schema.json")));
        List<Object> lines = new ArrayList<>();
        for (String line : run.out().lines().toList()) {
            Object object = JsonTree.read(line);
            assertEquals(List.of(), new JsonSchema(schema).objections(object), line);
            lines.add(object);
        }
        return lines;
    }

    private static List<Object> values(List<Object> lines, String key) {
        return lines.stream().map(line -> JsonTree.get(line, key)).toList();
    }

    @Test
    void markTellsEveryTuneThenTheRun() throws IOException {
        CommandRun run = CommandRun.of("mark", book(), folder + "/none", "--json", "--out", folder + "/out");
        assertEquals(1, run.code());
        assertEquals("", run.err());
        List<Object> lines = lines(run);
        assertEquals(List.of("tune", "tune", "input", "end"), values(lines, "event"));
        assertEquals(List.of("done", "refused"), values(lines.subList(0, 2), "outcome"));
        assertEquals("The Odd One", JsonTree.get(lines.get(1), "title"));
        List<Object> remarks = List.copyOf((List<?>) JsonTree.get(lines.get(1), "remarks"));
        assertTrue(values(remarks, "code").contains("no-button"), remarks.toString());
        assertEquals(1L, JsonTree.get(lines.get(3), "done"));
        assertEquals(2L, JsonTree.get(lines.get(3), "refused"));
    }

    @Test
    void aBookFileTellsEachEdition() throws IOException {
        book();
        ScoreText.write(folder.resolve("book.xml"), """
                <book title="Two" folder="book">
                  <instrument id="dg-21"/>
                  <instrument id="d-10" folder="one-row"/>
                  <tune file="a.musicxml"/>
                  <tune file="b.musicxml"/>
                </book>
                """);
        CommandRun run = CommandRun.of("mark", folder + "/book.xml", "--json", "--out", folder + "/out");
        assertEquals(1, run.code());
        assertEquals("", run.err());
        List<Object> lines = lines(run);
        assertEquals(List.of("tune", "tune", "end", "tune", "tune", "end"), values(lines, "event"));
        assertEquals(List.of("dg-21", "dg-21", "dg-21", "one-row", "one-row", "one-row"), values(lines, "edition"));
        assertTrue(Files.exists(folder.resolve("out/dg-21/index.html")));
    }

    private String wrongBook() throws IOException {
        book();
        return ScoreText.write(folder.resolve("book.xml"), """
                <book title="Two" folder="book">
                  <tune file="c.musicxml"/>
                  <tune file="b.musicxml" tempo="quick"/>
                </book>
                """);
    }

    @Test
    void bookCheckTellsEachThingThatIsWrongThenTheFile() throws IOException {
        String file = wrongBook();
        CommandRun run = CommandRun.of("book", "check", file, "--json");
        assertEquals(1, run.code());
        assertEquals("", run.err());
        List<Object> lines = lines(run);
        assertEquals(List.of("input", "input", "end"), values(lines, "event"));
        assertEquals(List.of("book", "book", "book"), values(lines, "command"));
        assertEquals(List.of(file, file), values(lines.subList(0, 2), "file"));
        List<Object> remarks = new ArrayList<>();
        values(lines.subList(0, 2), "remarks").forEach(each -> remarks.addAll((List<?>) each));
        assertEquals(List.of(2L, 3L), values(remarks, "line"));
        assertEquals(List.of("error", "error"), values(remarks, "severity"));
        assertEquals("There is no score c.musicxml in the folder of the scores.", JsonTree.get(remarks.get(0), "text"));
        assertEquals(List.of("Maybe a.musicxml or b.musicxml."), JsonTree.get(remarks.get(0), "advice"));
        assertEquals(2L, JsonTree.get(lines.get(2), "errors"));
        assertEquals(1L, JsonTree.get(lines.get(2), "refused"));
        assertEquals(0L, JsonTree.get(lines.get(2), "done"));
    }

    @Test
    void bookCheckTellsTheEditionsOfAGoodFile() throws IOException {
        book();
        String file = ScoreText.write(folder.resolve("book.xml"), """
                <book title="Two" folder="book">
                  <instrument id="dg-21"/>
                  <instrument id="d-10" folder="one-row"/>
                </book>
                """);
        CommandRun run = CommandRun.of("book", "check", file, "--json");
        assertEquals(0, run.code());
        List<Object> lines = lines(run);
        assertEquals(List.of("end"), values(lines, "event"));
        assertEquals(List.of(1L), values(lines, "done"));
        assertEquals(List.of(0L), values(lines, "errors"));
        List<Object> editions = List.copyOf((List<?>) JsonTree.get(lines.get(0), "editions"));
        assertEquals(List.of("dg-21", "one-row"), values(editions, "edition"));
        assertEquals(List.of(2L, 2L), values(editions, "tunes"));
    }

    @Test
    void markTellsOfABookFileThatIsWrongInLinesToo() throws IOException {
        CommandRun run = CommandRun.of("mark", wrongBook(), "--json", "--out", folder + "/out");
        assertEquals(1, run.code());
        assertEquals("", run.err());
        List<Object> lines = lines(run);
        assertEquals(List.of("input", "input", "end"), values(lines, "event"));
        assertEquals(List.of("mark", "mark", "mark"), values(lines, "command"));
    }

    @Test
    void aProposalHasNoLines() throws IOException {
        CommandRun run = CommandRun.of("book", "new", book(), "--json");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--json goes with check, not with new."), run.err());
    }

    @Test
    void refusalsAreGroupedByReasonWithTheWayOut() throws IOException {
        Object end = lines(CommandRun.of("mark", book(), "--json", "--out", folder + "/out"))
                .get(2);
        Object group = ((List<?>) JsonTree.get(end, "refusals")).get(0);
        assertEquals("no-button", JsonTree.get(group, "code"));
        assertEquals(1L, JsonTree.get(group, "count"));
        assertTrue(String.valueOf(JsonTree.get(group, "wayOut")).contains("--transpose auto"));
    }

    @Test
    void everyKeyOfAMarkedTuneIsDescribed() throws IOException {
        Object schema = JsonTree.read(Files.readString(Path.of("schemas", "run.schema.json")));
        Object figures = JsonTree.get(
                lines(CommandRun.of("mark", book(), "--json", "--out", folder + "/out"))
                        .get(0),
                "figures");
        Set<String> written = new TreeSet<>();
        ((java.util.Map<?, ?>) figures).keySet().forEach(key -> written.add(String.valueOf(key)));
        Set<String> required = new TreeSet<>();
        Object described = JsonTree.get(JsonTree.get(schema, "$defs"), "figures");
        ((List<?>) JsonTree.get(described, "required")).forEach(key -> required.add(String.valueOf(key)));
        assertEquals(required, written);
    }

    @Test
    void stripTellsWhatItTookOut() throws IOException {
        CommandRun.of("mark", book(), "--out", folder + "/out");
        List<Object> lines = lines(CommandRun.of("strip", folder + "/out", "--json", "--out", folder + "/bare"));
        assertEquals(List.of("tune", "end"), values(lines, "event"));
        assertTrue(String.valueOf(JsonTree.get(lines.get(0), "told")).contains("marks taken out"));
    }

    @Test
    void fitTellsTheTrialsOfATuneAndAtTheEndTheBook() throws IOException {
        CommandRun run = CommandRun.of(
                "fit", book(), "--json", "--instrument", "dg-21", "--transpose", "0..2", "--best", "2", "--solve", "1");
        List<Object> lines = lines(run);
        assertEquals(List.of("tune", "tune", "end"), values(lines, "event"));
        assertEquals(2, ((List<?>) JsonTree.get(lines.get(0), "trials")).size());
        assertEquals(1, ((List<?>) JsonTree.get(lines.get(2), "book")).size());
    }

    @Test
    void linesAreTheSameOnAnyNumberOfThreads() throws IOException {
        String book = book();
        CommandRun one = CommandRun.of("mark", book, "--json", "--threads", "1", "--out", folder + "/out");
        CommandRun four = CommandRun.of("mark", book, "--json", "--force", "--threads", "4", "--out", folder + "/out");
        assertEquals(one.out(), four.out());
    }

    @Test
    void fitPrintsEitherLinesOrOneText() throws IOException {
        assertEquals(
                2, CommandRun.of("fit", book(), "--json", "--format", "csv").code());
    }
}
