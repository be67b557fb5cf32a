package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code mark --transpose} and {@code --keep-notes}. */
class TransposeTest {

    /** On a D/G box F is missing. The signature stays that of D. */
    private static final String IN_F = "F4 G4 A4 F4 C5 A4 F4 F4";

    @TempDir
    Path folder;

    private CommandRun mark(String... words) throws IOException {
        String file = ScoreText.file(folder.resolve("tune.musicxml"), IN_F);
        String[] all = new String[words.length + 4];
        System.arraycopy(new String[] {"mark", file, "--out", folder + "/out"}, 0, all, 0, 4);
        System.arraycopy(words, 0, all, 4, words.length);
        return CommandRun.of(all);
    }

    private String marked() throws IOException {
        return Files.readString(folder.resolve("out/tune.musicxml"));
    }

    private Object tuneRecord() throws IOException {
        return JsonTree.read(Files.readString(folder.resolve("out/tune.record.json")));
    }

    private ScoreDocument tune() throws IOException, DiagnosedException {
        return ScoreDocument.decode(Files.readAllBytes(folder.resolve("tune.musicxml")));
    }

    @Test
    void scoreIsWrittenInTheKeyAskedFor() throws IOException, DiagnosedException {
        CommandRun run = mark("--transpose", "2", "--record");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("\n  transposed to E (+2)\n"), run.out());
        assertEquals(
                tune().transposed(2).text(),
                ScoreDocument.decode(marked().getBytes(StandardCharsets.UTF_8))
                        .withoutMarks()
                        .text());
        assertEquals(2, ((Number) JsonTree.get(tuneRecord(), "transposedBy")).intValue());
    }

    @Test
    void strippingGivesTheTransposedScore() throws IOException, DiagnosedException {
        mark("--transpose", "2");
        CommandRun.of("strip", folder + "/out", "--out", folder + "/bare");
        assertArrayEquals(tune().transposed(2).encode(), Files.readAllBytes(folder.resolve("bare/tune.musicxml")));
    }

    @Test
    void strippingACompressedScoreGivesTheTransposedScoreToo() throws IOException, DiagnosedException {
        Path packed = folder.resolve("in.mxl");
        pack(Path.of("samples/book/two-ducks.musicxml"), packed);
        CommandRun run = CommandRun.of(
                "mark", packed.toString(), "--instrument", "gc-21", "--transpose", "-7", "--out", folder + "/out");
        assertEquals(0, run.code(), run.err());
        CommandRun.of("strip", folder + "/out", "--out", folder + "/bare");
        assertEquals(
                ScoreDocument.decode(Files.readAllBytes(packed)).transposed(-7).text(),
                ScoreDocument.decode(Files.readAllBytes(folder.resolve("bare/in.mxl")))
                        .text());
    }

    private static void pack(Path score, Path packed) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(packed))) {
            zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
            zip.write("<container><rootfiles><rootfile full-path=\"score.xml\"/></rootfiles></container>"
                    .getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("score.xml"));
            zip.write(Files.readAllBytes(score));
        }
    }

    @Test
    void autoTakesTheNearestKeyThatCanBePlayed() throws IOException {
        CommandRun run = mark("--transpose", "auto", "--record");
        assertEquals(0, run.code(), run.err());
        assertEquals(2, ((Number) JsonTree.get(tuneRecord(), "transposedBy")).intValue());
    }

    @Test
    void keptNotesAreThoseOfTheSheetAndTheSheetSaysWhichKeySounds() throws IOException, DiagnosedException {
        CommandRun run = mark("--transpose", "auto", "--keep-notes", "--record");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("\n  notes as written, sounds in E (+2)\n"), run.out());
        assertTrue(marked().contains("sounds E (+2)"), marked());
        assertEquals(
                tune().text(),
                ScoreDocument.decode(marked().getBytes(StandardCharsets.UTF_8))
                        .withoutMarks()
                        .text());
        assertEquals(2, ((Number) JsonTree.get(tuneRecord(), "transposedBy")).intValue());
        assertEquals(true, JsonTree.get(tuneRecord(), "notesKept"));
    }

    @Test
    void keptNotesAndTransposedNotesHaveTheSameButtons() throws IOException {
        mark("--transpose", "2", "--keep-notes", "--marks", "buttons");
        String kept = marked();
        mark("--transpose", "2", "--marks", "buttons");
        assertEquals(lyrics(marked()), lyrics(kept));
        assertFalse(lyrics(kept).isEmpty());
    }

    private static String lyrics(String score) {
        StringBuilder texts = new StringBuilder();
        java.util.regex.Matcher matcher =
                java.util.regex.Pattern.compile("<text[^>]*>([^<]*)</text>").matcher(score);
        while (matcher.find()) {
            texts.append(matcher.group(1)).append(' ');
        }
        return texts.toString();
    }

    @Test
    void missingNoteNamesTheOptionThatHelps() throws IOException {
        CommandRun plain = mark();
        assertEquals(1, plain.code());
        assertTrue(plain.err().contains("\n  Maybe --transpose 2: there the tune can be played."), plain.err());
    }

    @Test
    void adviceCountsFromTheSheetAlsoAfterAMove() throws IOException {
        CommandRun moved = mark("--transpose", "1");
        assertEquals(1, moved.code());
        assertTrue(moved.err().contains("\n  Maybe --transpose 2: there"), moved.err());
    }

    @Test
    void wrongStepsAndLoneKeptNotesAreExplained() throws IOException {
        for (String wrong : new String[] {"25", "-25", "up", "1.5", "99999999999"}) {
            CommandRun run = mark("--transpose", wrong);
            assertEquals(2, run.code(), wrong);
            assertTrue(
                    run.err().contains("--transpose takes auto or a whole number from -24 to 24, not " + wrong + "."),
                    run.err());
        }
        CommandRun alone = mark("--keep-notes");
        assertEquals(2, alone.code());
        assertTrue(alone.err().contains("--keep-notes goes with --transpose or --key."), alone.err());
    }

    @Test
    void negativeNumberIsNoOption() throws IOException {
        CommandRun run = mark("--transpose", "-3", "--times", "once");
        assertEquals(0, run.code(), run.err());
    }
}
