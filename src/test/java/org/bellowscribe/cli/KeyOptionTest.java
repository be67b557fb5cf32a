package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code mark --key} and {@code --tempo}. */
class KeyOptionTest {

    @TempDir
    Path folder;

    private CommandRun mark(String... options) throws IOException {
        String file = ScoreText.file(folder.resolve("tune.musicxml"), "D5 F#5 A5 F#5 D5 F#5 A5 D5");
        String[] words = new String[options.length + 4];
        System.arraycopy(new String[] {"mark", file, "--out", folder + "/out"}, 0, words, 0, 4);
        System.arraycopy(options, 0, words, 4, options.length);
        return CommandRun.of(words);
    }

    @Test
    void aKeyIsReachedTheNearestWay() throws IOException {
        CommandRun run = mark("--key", "G");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("transposed to G (+5)"), run.out());
    }

    @Test
    void theKeyOfTheScoreMovesNothing() throws IOException {
        assertTrue(!mark("--key", "D").out().contains("transposed"));
    }

    @Test
    void noMoveChangesAMode() throws IOException {
        CommandRun run = mark("--key", "D minor");
        assertEquals(1, run.code());
        assertTrue(
                run.err().contains("The tune is in D: moved to any key it stays major, so it is never in D minor."),
                run.err());
    }

    @Test
    void keyAndTransposeExcludeEachOther() throws IOException {
        CommandRun run = mark("--key", "G", "--transpose", "2");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--key and --transpose exclude each other."), run.err());
    }

    @Test
    void aNameThatIsNoKeyIsRefused() throws IOException {
        CommandRun run = mark("--key", "H");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--key takes a tonic such as G or Bb"), run.err());
    }

    @Test
    void aTempoThatIsAskedForStandsOnTheSheet() throws IOException {
        mark("--tempo", "60");
        String sheet = java.nio.file.Files.readString(folder.resolve("out/tune.musicxml"));
        assertTrue(sheet.contains("<words>Marked for quarter = 60.</words>"), sheet);
    }
}
