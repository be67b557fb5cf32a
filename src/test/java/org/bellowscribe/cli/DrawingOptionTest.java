package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawingOptionTest {

    private static final String SCALE = "D4 E4 F#4 G4 A4 B4 C#5 D5";

    @TempDir
    private Path folder;

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    private List<String> written(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(name))) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(file -> !file.startsWith("."))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void twoPicturesStandBesideTheScore() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.musicxml"), SCALE);
        assertEquals(
                0,
                CommandRun.of("mark", scale, "--drawing", "--out", out("out")).code());
        assertEquals(List.of("scale.bellows.svg", "scale.buttons.svg", "scale.musicxml"), written("out"));
        assertTrue(Files.readString(folder.resolve("out").resolve("scale.bellows.svg"))
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"bellows\""));
    }

    @Test
    void sameScoreGivesTheSameBytes() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.musicxml"), SCALE);
        CommandRun.of("mark", scale, "--drawing", "--out", out("one"), "--threads", "1");
        CommandRun.of("mark", scale, "--drawing", "--out", out("two"), "--threads", "2");
        for (String name : written("one")) {
            assertArrayEquals(
                    Files.readAllBytes(folder.resolve("one").resolve(name)),
                    Files.readAllBytes(folder.resolve("two").resolve(name)));
        }
    }

    @Test
    void refusedTuneHasNoPictures() throws IOException {
        String flat = ScoreText.file(folder.resolve("flat.xml"), "D4 F4 D4 F4");
        assertEquals(
                1,
                CommandRun.of("mark", flat, "--drawing", "--record", "--out", out("out"))
                        .code());
        assertEquals(List.of("flat.record.json"), written("out"));
    }

    @Test
    void scoresOfOneNameHavePicturesOfTheirOwn() throws IOException {
        ScoreText.file(folder.resolve("in").resolve("tune.xml"), SCALE);
        ScoreText.file(folder.resolve("in").resolve("tune.musicxml"), SCALE);
        CommandRun.of("mark", out("in"), "--drawing", "--out", out("out"));
        assertEquals(
                List.of(
                        "tune.bellows.svg",
                        "tune.buttons.svg",
                        "tune.musicxml",
                        "tune.xml",
                        "tune.xml.bellows.svg",
                        "tune.xml.buttons.svg"),
                written("out"));
    }

    @Test
    void questionAloneHasNoPlaceForPictures() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.musicxml"), SCALE);
        CommandRun run = CommandRun.of("mark", scale, "--drawing", "--explain", "1");
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("--drawing needs a folder."), run.err());
    }

    @Test
    void pipeHasNoPlaceForPictures() {
        CommandRun run = CommandRun.of("mark", "-", "--drawing");
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("--drawing needs files"), run.err());
    }
}
