package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepEditsTest {

    // B4, the sixth note, is pulled on button 5 of the outer row; 2.4 pushed gives it too.
    private static final String SCALE = "D4 E4 F#4 G4 A4 B4 C#5 D5";
    private static final String OURS = "<text>(=5)</text>";

    @TempDir
    Path folder;

    private Path marked() {
        return folder.resolve("out/scale.musicxml");
    }

    private String mark(String... more) throws IOException {
        String score = ScoreText.file(folder.resolve("scale.musicxml"), SCALE);
        assertEquals(0, CommandRun.of(args(score, "out", more)).code());
        return Files.readString(marked());
    }

    private String[] args(String score, String out, String... more) {
        String[] args = new String[4 + more.length];
        System.arraycopy(more, 0, args, 4, more.length);
        args[0] = "mark";
        args[1] = score;
        args[2] = "--out";
        args[3] = folder.resolve(out).toString();
        return args;
    }

    private CommandRun again(String edited, String... more) throws IOException {
        Files.writeString(marked(), edited);
        return CommandRun.of(args(marked().toString(), "again", more));
    }

    private String rewritten() throws IOException {
        return Files.readString(folder.resolve("again/scale.musicxml"));
    }

    private static String last(String text, String old, String replacement) {
        int at = text.lastIndexOf(old);
        assertTrue(at >= 0, text);
        return text.substring(0, at) + replacement + text.substring(at + old.length());
    }

    @Test
    void markWithTheSignIsAPinThatKeepsItsSign() throws IOException {
        CommandRun run = again(last(mark(), OURS, "<text>4'!</text>"));
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("1 pin kept"), run.out());
        assertTrue(run.out().contains("(push, button 2.4)"), run.out());
        assertTrue(rewritten().contains("<text>4′!</text>"), rewritten());
    }

    @Test
    void keepingEditsWhereThereAreNoneIsSaid() throws IOException {
        String score = ScoreText.file(folder.resolve("scale.musicxml"), SCALE);
        CommandRun bare = CommandRun.of(args(score, "out", "--keep-edits"));
        assertTrue(bare.err().contains("has no marks of an earlier run, so --keep-edits keeps nothing"), bare.err());
        CommandRun same = again(mark(), "--keep-edits");
        assertTrue(same.err().contains("No mark differs from what the tool writes"), same.err());
        CommandRun edited = again(last(mark(), OURS, "<text>4'</text>"), "--keep-edits");
        assertFalse(edited.err().contains("keeps nothing"), edited.err());
    }

    @Test
    void aMarkThatCannotBeKeptIsToldOnceInWhateverKeyIsTried() throws IOException {
        for (String key : new String[] {"0", "auto"}) {
            CommandRun run = again(last(mark(), OURS, "<text>10!</text>"), "--transpose", key);
            assertEquals(1, run.code(), run.err());
            assertEquals(
                    1,
                    run.err().lines().filter(line -> line.contains("error [")).count(),
                    run.err());
        }
    }

    @Test
    void signedMarksSurviveFurtherRuns() throws IOException {
        again(last(mark(), OURS, "<text>4′!</text>"));
        String first = rewritten();
        assertEquals(0, again(first).code());
        assertEquals(first, rewritten());
    }

    @Test
    void changeWithoutTheSignIsWrittenOver() throws IOException {
        String before = mark();
        again(last(before, OURS, "<text>4′</text>"));
        assertEquals(before, rewritten());
    }

    @Test
    void changeIsKeptAndSignedWhereAllEditsAre() throws IOException {
        CommandRun run = again(last(mark(), OURS, "<text>4′</text>"), "--keep-edits");
        assertTrue(run.out().contains("1 pin kept"), run.out());
        assertTrue(rewritten().contains("<text>4′!</text>"), rewritten());
    }

    @Test
    void unchangedMarksAreNoEdits() throws IOException {
        String before = mark();
        CommandRun run = again(before, "--keep-edits");
        assertFalse(run.out().contains("kept"), run.out());
        assertEquals(before, rewritten());
    }

    @Test
    void silenceOfTheLeftHandIsKeptFromRunToRun() throws IOException {
        CommandRun run = again(last(mark(), "<text>d</text>", "<text>·!</text>"));
        assertTrue(run.out().contains("(left hand silent)"), run.out() + run.err());
        String first = rewritten();
        assertTrue(first.contains("<text>·!</text>"), first);
        assertEquals(0, again(first).code());
        assertEquals(first, rewritten());
    }

    @Test
    void leftHandThatDoesNotFitIsRefusedWithAdvice() throws IOException {
        CommandRun run = again(last(mark(), "<text>d</text>", "<text>xyz!</text>"));
        assertEquals(1, run.code());
        assertTrue(run.err().contains("error [hand-edit] The mark \"xyz\" at measure 2, note 4"), run.err());
    }

    @Test
    void wordsAreKeptWhereNoneWouldBeWritten() throws IOException {
        String added = "<direction placement=\"above\" id=\"bellowscribe-x\"><direction-type><words>push!</words>"
                + "</direction-type></direction><note><pitch><step>B</step>";
        String before = mark().replaceFirst("<note>\\s*<pitch><step>B</step>", added);
        assertEquals(0, again(before).code());
        assertTrue(rewritten().contains("<words>push!</words>"), rewritten());
        assertTrue(rewritten().contains("<text>4′</text>"), rewritten());
    }

    @Test
    void marksWithoutNamesAreKnownAgain() throws IOException {
        String before = mark();
        String lost = last(before, OURS, "<text>4′!</text>").replaceAll(" (name|id)=\"bellowscribe-[^\"]*\"", "");
        CommandRun run = again(lost);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("taken for ours"), run.err());
        assertTrue(rewritten().contains("<text>4′!</text>"), rewritten());
        assertEquals(count(before, "<lyric "), count(rewritten(), "<lyric "));
    }

    @Test
    void songTextIsNotTakenForMarks() throws IOException {
        String song = ScoreText.of("scale", SCALE)
                .replace("</note>", "<lyric number=\"1\"><text>9 geese</text></lyric></note>");
        Path score = folder.resolve("scale.musicxml");
        Files.writeString(score, song);
        assertEquals(0, CommandRun.of(args(score.toString(), "again")).code());
        assertEquals(8, count(rewritten(), "9 geese"));
    }

    @Test
    void buttonThatGivesAnotherNoteIsRefusedWithAdvice() throws IOException {
        CommandRun run = again(last(mark(), OURS, "<text>3!</text>"));
        assertEquals(1, run.code());
        assertTrue(
                run.err().contains("measure 2, part P1: error [hand-edit] The mark \"3\" at measure 2, note 2"),
                run.err());
        assertTrue(run.err().contains("Maybe 4′ or (5)."), run.err());
    }

    @Test
    void wordsThatCannotBeReadAreToldAndNotKept() throws IOException {
        CommandRun run = again(mark().replaceFirst("<words>p[a-z]+", "<words>gently"), "--keep-edits");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("warning [hand-edit] The mark \"gently\""), run.err());
    }

    @Test
    void keepingEditsAndNoPinsExcludeEachOther() throws IOException {
        mark();
        assertEquals(
                2,
                again(Files.readString(marked()), "--keep-edits", "--pins", "none")
                        .code());
    }

    private static int count(String text, String what) {
        return text.split(java.util.regex.Pattern.quote(what), -1).length - 1;
    }
}
