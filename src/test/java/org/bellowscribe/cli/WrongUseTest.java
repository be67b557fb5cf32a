package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A wrong command line does nothing, says what is wrong and offers the nearest name. */
class WrongUseTest {

    private static final String TUNE = "samples/book/two-ducks.musicxml";

    @TempDir
    Path folder;

    private void assertWrong(CommandRun run, String... remarks) {
        assertEquals(2, run.code(), run.err());
        assertEquals("", run.out());
        for (String remark : remarks) {
            assertTrue(run.err().contains(remark), run.err());
        }
        assertFalse(run.err().contains("Exception"), run.err());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    private CommandRun mark(String... more) {
        String[] words = new String[more.length + 4];
        words[0] = "mark";
        words[1] = TUNE;
        words[2] = "--out";
        words[3] = folder.resolve("out").toString();
        System.arraycopy(more, 0, words, 4, more.length);
        return CommandRun.of(words);
    }

    @Test
    void noCommand() {
        assertWrong(CommandRun.of(), "No command is given.", "--help");
    }

    @Test
    void helpOfTheCommandIsNamed() {
        assertWrong(mark("--instrumnet", "dg-21"), "See: bellowscribe mark --help");
        assertWrong(CommandRun.of("makr", TUNE), "See: bellowscribe --help");
    }

    @Test
    void airAloneIsNothingToPlay() {
        assertWrong(mark("--play", "air"), "--play air leaves nothing to play", "Maybe melody,air.");
    }

    @Test
    void shareOutOfRange() {
        assertWrong(mark("--shard", "5/4"), "--shard takes a share and how many there are", "not 5/4.");
        assertWrong(mark("--shard", "3"), "not 3.");
    }

    @Test
    void unknownCommand() {
        assertWrong(CommandRun.of("makr", TUNE), "There is no command makr.", "Maybe mark is meant.");
    }

    @Test
    void unknownOption() {
        assertWrong(mark("--instrumnet", "dg-21"), "no option --instrumnet", "Maybe --instrument is meant.");
    }

    @Test
    void stages() {
        assertWrong(mark("--stages", "both,bothe"), "--stages");
        assertWrong(mark("--stage-tempo", "75"), "none are asked for", "Maybe add --stages.");
        assertWrong(mark("--stages", "both", "--stage-tempo", "10"), "25 to 200");
        assertWrong(mark("--stages", "both", "--stage-tempo", "bohth=75"), "--stage-tempo");
        assertWrong(
                mark("--stages", "left-hand", "--written-left-hand", "sheet"), "the same file", "Maybe leave one out.");
    }

    @Test
    void furtherBoxes() {
        assertWrong(mark("--also-for", "dg-21-fourth-buton"), "Maybe dg-21-fourth-button");
        assertWrong(mark("--also-for", "anglo-cg-20"), "cannot be played like dg-21");
    }

    @Test
    void optionIsNotShortened() {
        assertWrong(mark("--instr", "dg-21"), "no option --instr");
    }

    @Test
    void unknownInstrument() {
        assertWrong(mark("--instrument", "dg-12"), "error [unknown-name]", "dg-12", "dg-21");
    }

    @Test
    void keysOfAnInstrumentAsAPlayerWritesThem() {
        assertWrong(mark("--instrument", "D/G"), "a name of the library is meant: dg-");
    }

    @Test
    void unknownStyle() {
        assertWrong(mark("--style", "parenthesis"), "error [unknown-name]", "Maybe parentheses.");
    }

    @Test
    void unknownMarks() {
        assertWrong(mark("--marks", "buttons,fingres"), "There are no marks called fingres.", "Maybe fingers.");
    }

    @Test
    void wrongInstrumentFile() throws IOException {
        String file = ScoreText.write(folder.resolve("box.xml"), """
                <instrument id="box" name="Box" base="dg-21">
                  <row number="1"><button number="1" push="H4"/></row>
                </instrument>
                """);
        assertWrong(mark("--instrument", file), "box.xml: line 2, column ", "error [bad-definition]", "H4");
    }

    @Test
    void wrongStyleFile() throws IOException {
        String file = ScoreText.write(folder.resolve("style.xml"), "<style id=\"mine\" name=\"Mine\" colour=\"red\"/>");
        assertWrong(mark("--style", file), "style.xml: line 1, column ", "error [bad-definition]", "colour");
    }

    @Test
    void missingInstrumentFile() {
        assertWrong(mark("--instrument", folder + "/no.xml"), "no.xml", "error [unreadable]");
    }

    @Test
    void noInput() {
        assertWrong(CommandRun.of("mark", "--out", folder + "/out"), "No file or folder is named.");
    }

    @Test
    void noPlaceForResults() {
        assertWrong(CommandRun.of("mark", TUNE), "Maybe add --out and a folder.");
    }

    @Test
    void twoPlacesForResults() {
        assertWrong(mark("--in-place"), "--out and --in-place exclude each other.");
    }

    @Test
    void threadsThatAreNoNumber() {
        assertWrong(mark("--threads", "many"), "--threads takes a whole number from 1 to 64, not many.");
        assertWrong(mark("--threads", "0"), "not 0.");
    }

    @Test
    void staffThatIsNoNumber() {
        assertWrong(mark("--staff", "upper"), "--staff takes a whole number from 1 to 99, not upper.");
        assertWrong(mark("--staff", "0"), "not 0.");
    }

    @Test
    void timesThatAreNeither() {
        assertWrong(mark("--times", "twice"), "--times takes again or once, not twice.");
    }

    @Test
    void optionWithoutItsValue() {
        assertWrong(CommandRun.of("mark", TUNE, "--out"), "--out needs a value (DIR).");
    }

    @Test
    void emptyNamesAreNotTheCurrentFolder() {
        assertWrong(
                CommandRun.of("mark", "", "--out", folder + "/out"), "An empty name stands among the words of mark.");
        assertWrong(CommandRun.of("mark", TUNE, "--out", ""), "--out needs a value (DIR), and an empty one is given.");
        assertWrong(mark("--pins", " "), "--pins needs a value (FILE|none), and an empty one is given.");
        assertWrong(CommandRun.of("instruments", "show", ""), "An empty name stands among the words of instruments.");
    }

    @Test
    void hyphenIsNoFolder() {
        assertWrong(CommandRun.of("mark", TUNE, "--out", "-"), "--out takes a folder.", "- < tune.musicxml");
        assertWrong(CommandRun.of("fit", TUNE, "--out", "-"), "Maybe leave --out out, or write ./-.");
        assertFalse(Files.exists(Path.of("-")));
    }

    @Test
    void optionGivenTwice() {
        assertWrong(
                mark("--manner", "learner", "--manner", "nope"), "--manner is given twice, as learner and as nope.");
        assertWrong(mark("--out", folder + "/b"), "--out is given twice, as ", "/b.");
    }

    @Test
    void optionOfAnyCommandGivenTwice() {
        assertWrong(CommandRun.of("fit", TUNE, "--best=1", "--best", "2"), "--best is given twice, as 1 and as 2.");
    }

    @Test
    void helpAndVersionAreNotWrong() {
        for (String word : new String[] {"--help", "-h", "help"}) {
            CommandRun help = CommandRun.of(word);
            assertEquals(0, help.code());
            assertTrue(help.out().contains("bellowscribe mark INPUT..."), help.out());
        }
        assertTrue(CommandRun.of("--version").out().startsWith("Bellowscribe "));
    }
}
