package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A left hand that the score has in a part {@code L1} under two measures of melody. */
class LeftHandPartOptionTest {

    private static final String MELODY = "G4 D5 D5 B4 A4 F#4 D4 r";
    private static final String SAMPLE = "samples/book/the-leaning-gate.musicxml";

    @TempDir
    private Path folder;

    private static String note(int octave, String steps, int duration) {
        StringBuilder notes = new StringBuilder();
        for (int i = 0; i < steps.length(); i++) {
            String alter = steps.charAt(i) == 'F' ? "<alter>1</alter>" : "";
            notes.append("<note>%s<pitch><step>%s</step>%s<octave>%d</octave></pitch><duration>%d</duration></note>"
                    .formatted(i == 0 ? "" : "<chord/>", steps.charAt(i), alter, octave, duration));
        }
        return notes.toString();
    }

    private static String score(String first, String second) {
        String melody = ScoreText.of("gate", MELODY);
        String attributes = "<attributes><divisions>1</divisions><key><fifths>2</fifths></key><time><beats>4</beats>"
                + "<beat-type>4</beat-type></time><clef><sign>F</sign><line>4</line></clef></attributes>";
        return melody.replace(
                        "</part-list>", "<score-part id=\"L1\"><part-name>Basses</part-name></score-part></part-list>")
                .replace(
                        "</score-partwise>",
                        ("<part id=\"L1\"><measure number=\"1\">%s%s</measure><measure number=\"2\">%s</measure></part>"
                                        + "</score-partwise>")
                                .formatted(attributes, first, second));
    }

    private CommandRun mark(String score, String... more) throws IOException {
        String file = ScoreText.write(folder.resolve("gate.musicxml"), score);
        List<String> words =
                new ArrayList<>(List.of("mark", file, "--out", out().toString(), "--marks", "left-hand,air"));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new));
    }

    private Path out() {
        return folder.resolve("out");
    }

    private List<String> letters(String score, String... more) throws IOException {
        CommandRun run = mark(score, more);
        assertEquals(0, run.code(), run.err());
        Matcher found =
                Pattern.compile("<text>([^<]*)</text>").matcher(Files.readString(out().resolve("gate.musicxml")));
        List<String> letters = new ArrayList<>();
        while (found.find()) {
            letters.add(found.group(1));
        }
        return letters;
    }

    @Test
    void bassesAndChordsArePlayedWhereTheyAreWritten() throws IOException {
        // A chord in an inversion on the second beat, and the fifth in the bass on the third: no pattern plays that.
        String first =
                note(2, "G", 1) + note(3, "DGB", 1) + note(3, "D", 1) + "<note><rest/><duration>1</duration></note>";
        String second = "<note><rest/><duration>2</duration></note>" + note(2, "D", 2);
        assertEquals(List.of("G", "g", "D", "D"), letters(score(first, second), "--left-hand-part", "L1"));
        assertEquals(List.of("G", "g", "D", "D"), letters(score(first, second), "--left-hand-part", "basses"));
    }

    @Test
    void lowestNoteFarBelowAChordIsABass() throws IOException {
        String together = note(2, "G", 4) + note(4, "GBD", 4).replaceFirst("<note>", "<note><chord/>");
        String rest = "<note><rest/><duration>4</duration></note>";
        assertEquals(List.of("G+g"), letters(score(together, rest), "--left-hand-part", "L1"));
    }

    @Test
    void oddChordIsNamedWithItsMeasure() throws IOException {
        String rest = "<note><rest/><duration>4</duration></note>";
        CommandRun run = mark(score(rest, note(3, "DFAC", 2) + note(3, "DFAC", 2)), "--left-hand-part", "2");
        assertEquals(0, run.code(), run.err());
        assertTrue(
                run.err()
                        .contains(
                                "measure 2: note [left-hand] The left hand's notes C3, D3, F#3, A3 are no major chord,"
                                        + " no minor chord and no open fifth; they are read as C (2 times in all)."),
                run.err());
    }

    @Test
    void whatTheInstrumentLacksIsAStandInAndCounted() throws IOException {
        String sharp = note(2, "F", 4);
        CommandRun run = mark(score(sharp, sharp), "--left-hand-part", "L1", "--instrument", "dg-21");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("left hand: 0 of 2 as wanted"), run.out());
    }

    @Test
    void partMovesWithTheMelody() throws IOException {
        String low = note(2, "G", 4);
        String rest = "<note><rest/><duration>4</duration></note>";
        assertEquals(List.of("D"), letters(score(low, rest), "--left-hand-part", "L1", "--transpose", "-5"));
    }

    @Test
    void aPartThatWasWrittenOutIsReadAsItWasPlayed() throws IOException {
        CommandRun first = CommandRun.of("mark", SAMPLE, "--out", out().toString(), "--written-left-hand", "part");
        assertEquals(0, first.code(), first.err());
        String written = Files.readString(out().resolve("the-leaning-gate.musicxml"));
        String kept = written.replace("\"bellowscribe-left-hand\"", "\"L1\"");
        Path copy = folder.resolve("copy");
        String file = ScoreText.write(copy.resolve("gate.musicxml"), kept);
        CommandRun second =
                CommandRun.of("mark", file, "--out", copy.resolve("out").toString(), "--left-hand-part", "L1");
        assertEquals(0, second.code(), second.err());
        assertFalse(second.out().contains("as wanted"), second.out());
    }

    @Test
    void unknownPartIsRefusedWithThePartsThereAre() throws IOException {
        String low = note(2, "G", 4);
        CommandRun run = mark(score(low, low), "--left-hand-part", "L7");
        assertEquals(1, run.code());
        assertTrue(run.err().contains("The score has no part L7."), run.err());
        assertTrue(run.err().contains("P1 (Melody), L1 (Basses)"), run.err());
        assertFalse(Files.exists(out().resolve("gate.musicxml")));
    }

    @Test
    void melodyIsNoLeftHand() throws IOException {
        String low = note(2, "G", 4);
        CommandRun run = mark(score(low, low), "--left-hand-part", "P1");
        assertEquals(1, run.code());
        assertTrue(run.err().contains("Part P1 has no notes for the left hand besides the melody."), run.err());
    }

    @Test
    void patternsAndAWrittenLeftHandExcludeEachOther() throws IOException {
        CommandRun run = mark(ScoreText.of("gate", MELODY), "--left-hand-part", "L1", "--pattern", "sustained");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--left-hand-part leaves nothing for --pattern to decide."), run.err());
    }
}
