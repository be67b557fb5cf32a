package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.report.JsonSchema;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SteeringOptionsTest {

    private static final String SCALE = "D4 E4 F#4 G4 A4 B4 C#5 D5";

    @TempDir
    Path folder;

    private String scale() throws IOException {
        return ScoreText.file(folder.resolve("scale.musicxml"), SCALE);
    }

    private String out() {
        return folder.resolve("out").toString();
    }

    private void pins(String entries) throws IOException {
        ScoreText.write(folder.resolve("scale.pins.xml"), "<pins>" + entries + "</pins>");
    }

    private Object written() throws IOException {
        return JsonTree.read(Files.readString(folder.resolve("out/scale.record.json")));
    }

    @Test
    void pinsBesideTheScoreAreKeptAndTold() throws IOException {
        // B4 is 1.5 pulled and 2.4 pushed: the latter costs going over to the other row and back.
        pins("<pin measure='2' note='2' button='2.4'/>");
        CommandRun run = CommandRun.of("mark", scale(), "--record", "--out", out());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("  1 pin kept; dear:"), run.out());
        assertTrue(run.out().contains("measure 2, note 2 (button 2.4): +"), run.out());
        assertTrue(run.out().contains("row change +"), run.out());
        Object step = ((List<?>) JsonTree.get(written(), "steps")).get(5);
        assertEquals(List.of("2.4"), JsonTree.get(step, "buttons"));
    }

    @Test
    void recordWithPinsAndExplanationsFitsTheSchema() throws IOException {
        pins("<pin measure='2' note='2' button='2.4' finger='3'/><pin measure='1' note='1' left-hand='silent'/>");
        CommandRun run = CommandRun.of("mark", scale(), "--record", "--out", out(), "--explain", "2");
        assertEquals(0, run.code(), run.err());
        Object schema = JsonTree.read(Files.readString(Path.of("schemas", "record.schema.json")));
        assertEquals(List.of(), new JsonSchema(schema).objections(written()));
        assertEquals(2, ((List<?>) JsonTree.get(written(), "pins")).size());
        assertEquals(4, ((List<?>) JsonTree.get(written(), "explanations")).size());
    }

    @Test
    void aFixedFingerThatTheSheetDoesNotShowIsSaid() throws IOException {
        pins("<pin measure='2' note='2' button='2.4' finger='3'/>");
        String note = "The fingers of 1 note are fixed, and the sheet does not print fingers.";
        CommandRun run = CommandRun.of("mark", scale(), "--out", out());
        assertTrue(run.err().contains(note), run.err());
        CommandRun shown = CommandRun.of("mark", scale(), "--marks", "buttons,left-hand,air,fingers", "--out", out());
        assertFalse(shown.err().contains(note), shown.err());
    }

    @Test
    void aRestIsExplainedByItsNumber() throws IOException {
        String score = ScoreText.file(folder.resolve("rests.musicxml"), "D5 r E5 r");
        CommandRun run = CommandRun.of("mark", score, "--explain", "1:r2");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("  measure 1, rest 2: "), run.out());
        assertFalse(run.out().contains("rest 1"), run.out());
        CommandRun none = CommandRun.of("mark", score, "--explain", "1:r3");
        assertTrue(none.err().contains("Measure 1 has no rest 3 to explain.\n  Maybe one from 1 to 2."), none.err());
        assertEquals(2, CommandRun.of("mark", score, "--explain", "1:r").code());
    }

    @Test
    void pinsCanBePassedOverOrTakenFromElsewhere() throws IOException {
        pins("<pin measure='9' note='1' direction='push'/>");
        assertEquals(
                0,
                CommandRun.of("mark", scale(), "--pins", "none", "--out", out()).code());
        String other = ScoreText.write(
                folder.resolve("other.xml"), "<pins><pin measure='1' note='1' direction='push'/></pins>");
        CommandRun run = CommandRun.of("mark", scale(), "--pins", other, "--out", out());
        assertTrue(run.out().contains("  1 pin kept"), run.out());
    }

    @Test
    void pinsOfAFolderThatBelongToNoScoreAreNamed() throws IOException {
        scale();
        ScoreText.write(folder.resolve("scales.pins.xml"), "<pins/>");
        pins("<pin measure='1' note='1' direction='push'/>");
        CommandRun run = CommandRun.of("mark", folder.toString(), "--out", out());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("scales.pins.xml: warning [unknown-name]"), run.err());
        assertTrue(run.err().contains("No score beside these pins is called scales"), run.err());
        assertTrue(run.err().contains("Maybe call it scale.pins.xml."), run.err());
        assertFalse(run.err().contains("/scale.pins.xml"), run.err());
    }

    @Test
    void pinsOfAFolderAreNotMissedWhereTheyDoNotCount() throws IOException {
        ScoreText.write(folder.resolve("other.pins.xml"), "<pins/>");
        CommandRun named = CommandRun.of("mark", scale(), "--out", out());
        assertFalse(named.err().contains("other.pins.xml"), named.err());
        CommandRun without = CommandRun.of("mark", folder.toString(), "--pins", "none", "--out", out());
        assertFalse(without.err().contains("other.pins.xml"), without.err());
    }

    @Test
    void wrongPinIsNamedWithItsFileAndLine() throws IOException {
        pins("\n<pin measure='9' note='1' direction='push'/>");
        CommandRun run = CommandRun.of("mark", scale(), "--out", out());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("error [bad-definition] scale.pins.xml, line 2, column"), run.err());
        assertTrue(run.err().contains("The tune has no measure 9."), run.err());
        assertTrue(run.err().contains("Maybe one from 1 to 2."), run.err());
        assertFalse(Files.exists(folder.resolve("out/scale.musicxml")));
    }

    @Test
    void pinsThatAreNoXmlAreNotSaidOfTheScore() throws IOException {
        pins("<pin measure=1 note='1'/>");
        CommandRun run = CommandRun.of("mark", scale(), "--out", out());
        assertEquals(1, run.code());
        assertTrue(
                run.err()
                        .contains(
                                "error [bad-definition] scale.pins.xml, line 1, column 20: The value of measure in <pin>"),
                run.err());
        assertFalse(run.out().contains("Export it again"), run.out());
    }

    @Test
    void missingFileOfPinsIsNamed() throws IOException {
        CommandRun run = CommandRun.of("mark", scale(), "--pins", folder + "/none.xml", "--out", out());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("The pins in none.xml cannot be read (there is no such file"), run.err());
    }

    @Test
    void pinsThatCannotBePlayedTogetherAreNamed() throws IOException {
        pins("<pin measure='1' note='2' direction='push'/>");
        CommandRun run = CommandRun.of("mark", scale(), "--out", out());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("error [pin-conflict]"), run.err());
        assertTrue(run.err().contains("the pin at measure 1, note 2 (push)"), run.err());
    }

    @Test
    void questionIsAnsweredWithoutWriting() throws IOException {
        CommandRun run = CommandRun.of("mark", scale(), "--explain", "2:2");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("  measure 2, note 2 (B4): pull, button 1.5"), run.out());
        assertTrue(run.out().contains("push, button 2.4"), run.out());
        assertTrue(run.out().contains("Nothing was written"), run.out());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void questionAboutANoteThatIsNotThereIsRefused() throws IOException {
        CommandRun run = CommandRun.of("mark", scale(), "--explain", "2:9");
        assertEquals(1, run.code());
        assertTrue(run.err().contains("Measure 2 has no note 9 to explain."), run.err());
        assertTrue(CommandRun.of("mark", scale(), "--explain", "7").err().contains("The tune has no measure 7"));
    }

    @Test
    void questionMustBeAMeasureAndANote() throws IOException {
        CommandRun run = CommandRun.of("mark", scale(), "--explain", "2:x");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("such as 12:3 or a rest such as 12:r1, not 2:x"), run.err());
    }

    @Test
    void questionIsAboutOneTune() throws IOException {
        CommandRun run = CommandRun.of("mark", "samples", "--explain", "2");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--explain is about one tune"), run.err());
    }

    @Test
    void recordOfAQuestionNeedsAFolder() throws IOException {
        CommandRun run = CommandRun.of("mark", scale(), "--explain", "2", "--record");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("Maybe add --out and a folder."), run.err());
    }

    @Test
    void otherWaysStandBesideTheMarkedScoreAndInATable() throws IOException {
        CommandRun run =
                CommandRun.of("mark", "samples/book/two-ducks.musicxml", "--out", out(), "--alternatives", "1");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("    two-ducks.2.musicxml "), run.out());
        assertTrue(run.out().contains("not proved to be the best"), run.out());
        String first = Files.readString(folder.resolve("out/two-ducks.musicxml"));
        String second = Files.readString(folder.resolve("out/two-ducks.2.musicxml"));
        assertFalse(first.equals(second));
        assertTrue(second.contains("<lyric "));
    }

    @Test
    void otherWayTakesTheNameOfNoOtherResult() throws IOException {
        scale();
        ScoreText.file(folder.resolve("scale.2.musicxml"), SCALE);
        CommandRun run = CommandRun.of("mark", folder.toString(), "--out", out(), "--alternatives", "1");
        assertEquals(1, run.code());
        assertTrue(run.err().contains("The result would take the place of that of"), run.err());
    }

    @Test
    void otherWaysOfAFolderAreReplacedWhenItIsMarkedAgain() throws IOException {
        scale();
        String[] words = {"mark", folder.toString(), "--in-place", "--alternatives", "1"};
        assertEquals(0, CommandRun.of(words).code());
        String before = Files.readString(folder.resolve("scale.2.musicxml"));
        CommandRun again = CommandRun.of(words);
        assertEquals(0, again.code(), again.err());
        assertTrue(again.out().contains("1 tune marked, 0 not marked"), again.out());
        assertEquals(before, Files.readString(folder.resolve("scale.2.musicxml")));
    }

    @Test
    void marksComeOutOfTheOtherWaysOfAFolderToo() throws IOException {
        Path tune = Path.of(scale());
        String bare = Files.readString(tune);
        CommandRun.of("mark", folder.toString(), "--in-place", "--alternatives", "1");
        assertEquals(0, CommandRun.of("strip", folder.toString(), "--in-place").code());
        assertEquals(bare, Files.readString(tune));
        assertEquals(bare, Files.readString(folder.resolve("scale.2.musicxml")));
    }

    @Test
    void otherWaysThatAnEarlierRunLeftAreNamed() throws IOException {
        String tune = "samples/book/two-ducks.musicxml";
        CommandRun.of("mark", tune, "--out", out(), "--alternatives", "2");
        CommandRun fewer = CommandRun.of("mark", tune, "--out", out(), "--alternatives", "1");
        assertEquals(0, fewer.code());
        assertTrue(fewer.err().contains("warning [older-result]"), fewer.err());
        assertTrue(fewer.err().contains("two-ducks.3.musicxml: it is of an earlier one."), fewer.err());
        assertFalse(fewer.err().contains("two-ducks.2.musicxml"), fewer.err());
        CommandRun none = CommandRun.of("mark", tune, "--out", out());
        assertTrue(none.err().contains("two-ducks.3.musicxml: they are of an earlier one."), none.err());
        assertTrue(none.err().contains("Maybe delete them"), none.err());
    }

    @Test
    void numberOfOtherWaysIsOneDigit() throws IOException {
        CommandRun run = CommandRun.of("mark", scale(), "--out", out(), "--alternatives", "ten");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--alternatives takes a whole number from 0 to 9, not ten."), run.err());
    }

    @Test
    void soundThatTheDirectionLacksIsNotBlamedOnTheBellows() throws IOException {
        // C5 and E5 together are pulled only, and the bass G is pushed only.
        CommandRun run = CommandRun.of("mark", "samples/book/two-ducks.musicxml", "--explain", "2:1");
        assertTrue(run.out().matches("(?s).*left hand G +- +not in the direction of these notes.*"), run.out());
    }
}
