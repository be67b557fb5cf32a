package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hand edits on sheets with a line for each row. */
class RowLinesTest {

    // D4 and G4 pushed are buttons 3 of the outer and of the inner row.
    private static final String NOTES = "D4 F#4 A4 D5 G4 B4 D5 G5";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private String marked() throws IOException {
        String score = ScoreText.file(folder.resolve("tune.musicxml"), NOTES);
        assertEquals(0, mark(score, "out").code());
        return Files.readString(folder.resolve("out/tune.musicxml"));
    }

    private CommandRun mark(String score, String out, String... more) {
        String[] words = new String[6 + more.length];
        System.arraycopy(more, 0, words, 6, more.length);
        System.arraycopy(
                new String[] {"mark", score, "--out", folder.resolve(out).toString(), "--style", "rows"},
                0,
                words,
                0,
                6);
        return CommandRun.of(words);
    }

    private CommandRun again(String edited, String... more) throws IOException {
        Path score = folder.resolve("out/tune.musicxml");
        Files.writeString(score, edited);
        return mark(score.toString(), "again", more);
    }

    private static String lines(String upper, String lower) {
        return "<lyric number=\"1\" name=\"bellowscribe-row-1\"><syllabic>single</syllabic><text>" + upper
                + "</text></lyric><lyric number=\"2\" name=\"bellowscribe-row-2\"><syllabic>single</syllabic><text>"
                + lower + "</text></lyric>";
    }

    @Test
    void aNumberMovedToTheOtherLineIsAPin() throws IOException {
        String marked = marked();
        // The second D5.
        int at = marked.lastIndexOf("<step>D</step>");
        String rest = marked.substring(at);
        String edited = rest.contains(lines("–", "5"))
                ? rest.replaceFirst(lines("–", "5"), lines("6!", "–"))
                : rest.replaceFirst(lines("6", "–"), lines("–", "5!"));
        assertTrue(!edited.equals(rest), rest);
        CommandRun run = again(marked.substring(0, at) + edited);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("1 pin kept"), run.out());
        String written = Files.readString(folder.resolve("again/tune.musicxml"));
        assertTrue(written.contains(lines("6!", "–")) || written.contains(lines("–", "5!")), written);
    }

    @Test
    void numbersInTwoLinesAtOneNoteAreRefused() throws IOException {
        String marked = marked();
        CommandRun run = again(marked.replaceFirst(lines("3", "–"), lines("3", "3!")));
        assertEquals(1, run.code(), run.out());
        assertTrue(run.err().contains("Maybe 3 in the line of row 1"), run.err());
    }
}
