package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What becomes of marks when a notation program that drops their names saves the score. The file {@code .saved} was marked
 * and saved by MuseScore 3.2.3.
 */
class SavedAgainTest {

    private static final Path SCORES = Path.of("src/test/resources/org/bellowscribe/saved-again");
    private static final Path SCORE = SCORES.resolve("the-pond-in-march.musicxml");
    private static final Path SAVED = SCORES.resolve("the-pond-in-march.saved.musicxml");
    private static final String ALL_MARKS =
            "direction,direction-changes,air,opening,opening-at-repeat,sounding-key,hand,"
                    + "fingers,buttons,left-hand,left-hand-fingers";
    private static final List<String> ELEMENTS = List.of("<lyric ", "<words", "<fingering", "<part id", "<harmony");

    @TempDir
    private Path folder;

    private Path marked(Path score, String into) {
        CommandRun run = CommandRun.of(
                "mark",
                score.toString(),
                "--marks",
                ALL_MARKS,
                "--written-left-hand",
                "part",
                "--out",
                folder.resolve(into).toString());
        assertEquals(0, run.code(), run.err());
        return folder.resolve(into).resolve(score.getFileName());
    }

    private CommandRun strip(Path score) {
        return CommandRun.of(
                "strip", score.toString(), "--out", folder.resolve("stripped").toString());
    }

    private static List<Integer> counts(Path score) throws IOException {
        String text = Files.readString(score);
        return ELEMENTS.stream()
                .map(each -> text.split(Pattern.quote(each), -1).length - 1)
                .toList();
    }

    private void assertKnownAgain(Path score, Path saved) throws IOException {
        Path again = marked(saved, "again");
        assertEquals(counts(marked(score, "first")), counts(again));
        assertEquals(Files.readString(again), Files.readString(marked(again, "third")));
        strip(again);
        assertEquals(counts(score), counts(folder.resolve("stripped").resolve(saved.getFileName())));
    }

    @Test
    void allMarksThatLostTheirNamesAreKnownAgain() throws IOException {
        assertKnownAgain(SCORE, SAVED);
    }

    @Test
    void wordsThatOnlyTellHowFarTheBellowsAreOpenAreKnownAgain() throws IOException {
        Path score = Path.of("samples", "book", "eel-feast-polka.musicxml");
        Path nameless = folder.resolve("nameless.musicxml");
        Files.writeString(
                nameless,
                Files.readString(marked(score, "named"))
                        .replaceAll("(<lyric [^>]*|<direction [^>]*) (id|name)=\"bellowscribe-[^\"]*\"", "$1"));
        assertTrue(Files.readString(nameless).contains("<words>open "));
        assertEquals(
                counts(marked(score, "first")).get(1),
                counts(marked(nameless, "again")).get(1));
    }

    @Test
    void fingersThatWeWouldNotWriteAreTheScoresOwn() throws IOException {
        Path other = folder.resolve("other.musicxml");
        Files.writeString(other, Files.readString(SAVED).replaceAll("<fingering>\\d", "<fingering>5"));
        int struck = 19;
        assertEquals(
                counts(marked(SAVED, "again")).get(2) + struck,
                counts(marked(other, "again")).get(2));
    }

    @Test
    void aPartWhoseLettersNameOtherNotesIsTheScoresOwn() throws IOException {
        Path other = folder.resolve("other.musicxml");
        Files.writeString(
                other,
                Files.readString(SAVED)
                        .replace("<step>G</step>\n          <octave>2", "<step>C</step>\n          <octave>2"));
        assertEquals(3, counts(marked(other, "again")).get(3));
    }

    @Test
    void stripTellsHowManyMarksItTook() {
        CommandRun run = strip(marked(SCORE, "first"));
        assertTrue(run.out().contains("the-pond-in-march.musicxml: 76 marks taken out\n"), run.out());
        assertTrue(run.out().contains("\n1 stripped, 0 without marks, 0 not.\n"), run.out());
    }

    @Test
    void stripOfAScoreWithoutMarksSaysSo() {
        CommandRun run = strip(SCORE);
        assertEquals(0, run.code());
        assertTrue(run.out().contains("the-pond-in-march.musicxml: no marks found\n"), run.out());
        assertTrue(run.out().contains("\n0 stripped, 1 without marks, 0 not.\n"), run.out());
        assertEquals("", run.err());
    }

    @Test
    void stripOfMarksThatLostTheirNamesSaysWhatToDo() {
        CommandRun run = strip(SAVED);
        assertTrue(run.out().contains("the-pond-in-march.saved.musicxml: no marks found\n"), run.out());
        assertTrue(run.err().contains("warning [lyrics] Lyrics that look like marks have no names of ours"), run.err());
        assertTrue(
                run.err().contains("Maybe mark this file again with the same options, then strip the result"),
                run.err());
    }
}
