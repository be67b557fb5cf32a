package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other ways to play a tune from an earlier run are no tunes of their folder. */
class OtherWaysTest {

    private static final String MARKED = "<score-partwise><part><measure><note>"
            + "<lyric name=\"bellowscribe-buttons\"><text>1</text></lyric></note></measure></part></score-partwise>";

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private List<String> found(String... inputs) {
        return Sources.find(List.of(inputs), null, false).found().stream()
                .map(Source::name)
                .toList();
    }

    @Test
    void folderPassesOverThem() throws IOException {
        file("reel.musicxml", MARKED);
        file("reel.2.musicxml", MARKED);
        file("reel.10.musicxml", MARKED);
        assertEquals(List.of("reel.musicxml"), found(folder.toString()));
    }

    @Test
    void namedItIsTaken() throws IOException {
        file("reel.xml", MARKED);
        assertEquals(List.of("reel.2.xml"), found(file("reel.2.xml", MARKED).toString()));
    }

    @Test
    void numberedScoreWithoutMarksIsATune() throws IOException {
        file("reel.xml", MARKED);
        file("reel.2.xml", "<score-partwise/>");
        assertEquals(List.of("reel.2.xml", "reel.xml"), found(folder.toString()));
    }

    @Test
    void numberedScoreWithoutItsTuneIsATune() throws IOException {
        file("reel.xml", MARKED);
        file("jig.2.xml", MARKED);
        file("reel.2.musicxml", MARKED);
        file("reel.1.xml", MARKED);
        assertEquals(List.of("jig.2.xml", "reel.1.xml", "reel.2.musicxml", "reel.xml"), found(folder.toString()));
    }

    @Test
    void thoseBesideTheResultAreFound() throws IOException {
        String tune = file("reel.xml", "<score-partwise/>").toString();
        Path out = Files.createDirectories(folder.resolve("out"));
        file("out/reel.3.xml", MARKED);
        file("out/reel.4.xml", "<score-partwise/>");
        Sources sources = Sources.find(List.of(tune), out, false);
        assertEquals(List.of(out.resolve("reel.3.xml")), sources.found().get(0).olderWays());
    }

    @Test
    void resultOfAnotherTuneIsNone() throws IOException {
        file("reel.xml", "<score-partwise/>");
        file("reel.2.xml", "<score-partwise/>");
        Path out = Files.createDirectories(folder.resolve("out"));
        file("out/reel.2.xml", MARKED);
        Sources sources = Sources.find(List.of(folder.toString()), out, false);
        assertEquals(List.of(), sources.found().get(1).olderWays());
    }

    @Test
    void earlierResultOfAnotherTuneIsNone() throws IOException {
        String tune = file("reel.xml", "<score-partwise/>").toString();
        file("reel.2.xml", "<score-partwise/>");
        Path out = Files.createDirectories(folder.resolve("out"));
        file("out/reel.2.xml", MARKED);
        Sources sources = Sources.find(List.of(tune), out, false);
        assertEquals(List.of(), sources.found().get(0).olderWays());
    }
}
