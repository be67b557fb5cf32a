package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MannersLearnTest {

    private static final String SCALE = "D4 E4 F#4 G4 A4 B4 C#5 D5";
    // G4 lies on the outer row pulled between two pushed notes; the inner row has it pushed too.
    private static final String PUSHED = "<pins><pin measure=\"1\" note=\"4\" direction=\"push\"/></pins>";
    // A press of the air button for which the bellows have no need.
    private static final String NEVER = "<pins><pin measure=\"1\" note=\"2\" air=\"full\"/></pins>";

    @TempDir
    Path folder;

    private String manner() {
        return folder.resolve("my-way.xml").toString();
    }

    private String score(String name) throws IOException {
        return ScoreText.file(folder.resolve(name), SCALE);
    }

    private CommandRun learn(String... inputs) {
        String[] words = new String[inputs.length + 4];
        words[0] = "manners";
        words[1] = "learn";
        System.arraycopy(inputs, 0, words, 2, inputs.length);
        words[inputs.length + 2] = "--out";
        words[inputs.length + 3] = manner();
        return CommandRun.of(words);
    }

    private void pin(String pins) throws IOException {
        Files.writeString(folder.resolve("scale.pins.xml"), pins);
    }

    @Test
    void whatAPinAsksForComesOutInTheMannerLearned() throws IOException {
        String score = score("scale.musicxml");
        pin(PUSHED);
        CommandRun run = learn(score);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("before and after: directions 0.0 -> 100.0 % of 1\n"), run.out());
        assertTrue(run.out().contains("on tunes left out: not known"), run.out());
        assertTrue(run.out().contains("scale.musicxml, measure 1"), run.out());
        String text = Files.readString(Path.of(manner()));
        assertTrue(text.contains("<manner id=\"my-way\" based-on=\"along-the-row\">"), text);
        assertTrue(text.contains("ask a teacher or a health professional"), text);
        CommandRun again = learn(score, "--based-on", manner());
        assertTrue(again.out().contains("directions 100.0 -> 100.0 % of 1\n"), again.out());
        assertTrue(again.out().contains("no points moved"), again.out());
    }

    @Test
    void aPinThatNoPointsExplainIsNamedAndMovesNothing() throws IOException {
        String score = score("scale.musicxml");
        pin(NEVER);
        CommandRun run = learn(score);
        assertEquals(0, run.code(), run.err());
        assertTrue(
                run.out()
                        .contains("scale.musicxml, measure 1: no points make this cheapest, because other marks meet no"
                                + " rule more often, and these less often: "),
                run.out());
        assertTrue(run.out().contains("no points moved"), run.out());
    }

    @Test
    void everyMarkOfASheetCountsWhereEditsAreKept() throws IOException {
        String score = score("scale.musicxml");
        String out = folder.resolve("out").toString();
        CommandRun.of("mark", score, "--out", out, "--manner", "across-the-rows");
        CommandRun run = learn(folder.resolve("out/scale.musicxml").toString(), "--keep-edits");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("-> 100.0 % of 8, directions"), run.out());
        assertTrue(run.out().contains("my-way.xml written. Use it: mark ... --manner "), run.out());
    }

    @Test
    void aScoreWithoutMarksTeachesNothingAndIsNamed() throws IOException {
        CommandRun run = learn(score("scale.musicxml"));
        assertEquals(1, run.code());
        assertTrue(run.err().contains("Nothing is marked here that could be learned from."), run.err());
        assertFalse(Files.exists(Path.of(manner())));
    }

    @Test
    void learnNeedsScoresAndAFile() {
        assertEquals(2, learn().code());
        CommandRun run = CommandRun.of("manners", "learn", "samples");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("learn needs --out."), run.err());
    }

    @Test
    void theResultNeverTakesThePlaceOfAScore() throws IOException {
        String score = score("scale.musicxml");
        CommandRun run = CommandRun.of("manners", "learn", score, "--out", score);
        assertEquals(2, run.code());
        assertTrue(run.err().contains("would take the place of the input"), run.err());
    }
}
