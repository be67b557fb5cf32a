package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the tool says about files that it cannot mark; it never writes anything for them. */
class RefusalTest {

    @TempDir
    Path folder;

    private CommandRun mark(String file, String... more) {
        String[] words = new String[more.length + 4];
        words[0] = "mark";
        words[1] = file;
        words[2] = "--out";
        words[3] = folder.resolve("out").toString();
        System.arraycopy(more, 0, words, 4, more.length);
        return CommandRun.of(words);
    }

    private void assertRefused(CommandRun run, String remark) {
        assertEquals(1, run.code(), run.err());
        assertTrue(run.err().contains(remark), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    private String file(String name, String text) throws IOException {
        return ScoreText.write(folder.resolve(name), text);
    }

    @Test
    void fileThatIsNoXml() throws IOException {
        assertRefused(mark(file("tune.xml", "G A B c |")), "tune.xml: line 1, column 1: error [not-xml]");
    }

    @Test
    void fileOfAnotherKind() throws IOException {
        assertRefused(
                mark(file("tune.xml", "X:1\nT:Tune\nK:G\nGABc|")),
                "tune.xml: error [not-musicxml] The file is an ABC tune, not a score.");
    }

    @Test
    void xmlThatIsNoScore() throws IOException {
        assertRefused(mark(file("page.xml", "<html><body/></html>")), "page.xml: error [not-musicxml]");
    }

    @Test
    void emptyFile() throws IOException {
        assertRefused(mark(file("tune.xml", "")), "tune.xml: error [empty-file] The file is empty.");
    }

    @Test
    void scoreWithoutNotes() throws IOException {
        assertRefused(mark(ScoreText.file(folder.resolve("rests.xml"), "r r r r")), "error [no-notes]");
    }

    @Test
    void noteThatNoButtonGives() throws IOException {
        CommandRun run = mark(ScoreText.file(folder.resolve("flat.xml"), "D4 E4 F#4 G4 D4 F4 D4 D4"));
        assertRefused(run, "flat.xml: measure 2, part P1: error [no-button]");
        assertTrue(run.err().contains("F4"), run.err());
        assertTrue(run.err().contains("\n  Maybe --transpose"), run.err());
        assertTrue(run.out().contains("not marked [no-button]"), run.out());
    }

    @Test
    void bellowsThatCannotLast() throws IOException {
        String small = file("small.xml", """
                <instrument id="small" name="Small D/G" base="dg-21">
                  <left-hand replaces-base="yes"/>
                  <bellows><capacity>1</capacity></bellows>
                </instrument>
                """);
        CommandRun run = mark(ScoreText.file(folder.resolve("tune.xml"), "D4 D4 D4 D4"), "--instrument", small);
        assertRefused(run, "error [no-air]");
    }

    @Test
    void fileThatIsNotThere() {
        assertRefused(mark(folder + "/no.xml"), "no.xml: error [unreadable] There is no such file or folder.");
    }

    @Test
    void folderForResultsThatIsAFile() throws IOException {
        String tune = ScoreText.file(folder.resolve("tune.xml"), "D4 E4 F#4 D4");
        String blocked = file("blocked", "a file");
        CommandRun run = CommandRun.of("mark", tune, "--out", blocked);
        assertEquals(1, run.code());
        assertTrue(run.err().contains("error [unwritable]"), run.err());
        assertEquals("a file", Files.readString(Path.of(blocked)));
    }

    @Test
    void resultThatWouldReplaceItsInput() throws IOException {
        Path tune = folder.resolve("tune.xml");
        String name = ScoreText.file(tune, "D4 E4 F#4 D4");
        String before = Files.readString(tune);
        CommandRun run = CommandRun.of("mark", name, "--out", folder.toString());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("error [unwritable]"), run.err());
        assertEquals(before, Files.readString(tune));
    }

    @Test
    void textBeforeTheXmlDeclaration() throws IOException {
        String score = ScoreText.of("Tune", "D4 E4 F#4 G4");
        assertRefused(
                mark(file("words.xml", "exported today\n" + score)),
                "words.xml: line 2, column 1: error [not-xml] Text stands before <?xml, which must be the very first of the"
                        + " file.\n  Maybe delete what stands before it.");
        assertRefused(
                mark(file("space.xml", "\n  " + score)),
                "space.xml: line 2, column 3: error [not-xml] Blank space stands before <?xml");
    }
}
