package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeftHandOptionsTest {

    private static final String TUNE = "samples/book/the-leaning-gate.musicxml";

    @TempDir
    Path folder;

    private String marked(String... more) throws IOException {
        String[] words = new String[more.length + 4];
        System.arraycopy(new String[] {"mark", TUNE, "--out", folder.toString()}, 0, words, 0, 4);
        System.arraycopy(more, 0, words, 4, more.length);
        CommandRun run = CommandRun.of(words);
        assertEquals(0, run.code(), run.err());
        return Files.readString(folder.resolve("the-leaning-gate.musicxml"));
    }

    @Test
    void thePartIsAddedOnlyIfAskedFor() throws IOException {
        assertFalse(marked().contains("<part id=\"bellowscribe-left-hand\">"));
        assertTrue(marked("--written-left-hand", "part").contains("<part id=\"bellowscribe-left-hand\">"));
        assertFalse(Files.exists(folder.resolve("the-leaning-gate.left-hand.musicxml")));
    }

    @Test
    void theSheetStandsBesideTheResult() throws IOException {
        assertFalse(marked("--written-left-hand", "sheet").contains("<part id=\"bellowscribe-left-hand\">"));
        assertTrue(Files.readString(folder.resolve("the-leaning-gate.left-hand.musicxml"))
                .contains(": left hand alone</work-title>"));
    }

    @Test
    void thePartIsInTheKeyOfTheSheet() throws IOException {
        assertEquals("<fifths>2", fifths(marked("--written-left-hand", "part")));
        assertEquals("<fifths>1", fifths(marked("--written-left-hand", "part", "--transpose", "5")));
        String kept = marked("--written-left-hand", "part", "--transpose", "5", "--keep-notes");
        assertEquals("<fifths>2", fifths(kept));
        // The button G is written as the D that the sheet has in its place.
        assertTrue(
                kept.contains("<step>D</step><octave>3</octave></pitch><duration>1</duration><voice>1</voice>"
                        + "<type>eighth</type><lyric number=\"1\" name=\"bellowscribe-left-hand\"><syllabic>single</syllabic>"
                        + "<text>G</text>"),
                kept);
    }

    private static String fifths(String score) {
        String part = score.substring(score.indexOf("<part id=\"bellowscribe-left-hand\">"));
        return part.substring(part.indexOf("<fifths>"), part.indexOf("</fifths>"));
    }

    @Test
    void strokesOnTwinButtonsAreCountedInTheReport() {
        // The D/G box has the bass and chord of D on other buttons in the other direction.
        CommandRun run = CommandRun.of("mark", "samples/book/pump-sunday.musicxml", "--out", folder.toString());
        assertTrue(
                run.out().matches("(?s).*left hand: \\d+ of \\d+ as wanted; .*; on twin buttons [1-9]\\d*\\R.*"),
                run.out());
    }

    @Test
    void wrongUseIsExplained() {
        CommandRun wrong = CommandRun.of("mark", TUNE, "--out", folder.toString(), "--written-left-hand", "staff");
        assertEquals(2, wrong.code());
        assertTrue(
                wrong.err().contains("--written-left-hand takes part, sheet or part,sheet, not staff."), wrong.err());
        CommandRun inPlace = CommandRun.of("mark", TUNE, "--in-place", "--written-left-hand", "sheet");
        assertEquals(2, inPlace.code());
        assertTrue(inPlace.err().contains("--written-left-hand sheet goes with --out"), inPlace.err());
        CommandRun piped = CommandRun.piped(new byte[0], "mark", "-", "--written-left-hand", "part,sheet");
        assertEquals(2, piped.code());
        assertTrue(piped.err().contains("sheet needs files"), piped.err());
    }
}
