package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a tune that cannot be played is said to be playable, it is. */
class ElsewhereTest {

    private static final Pattern TRANSPOSE =
            Pattern.compile("Maybe --transpose (-?\\d+): there the tune can be played\\.");
    private static final Pattern BOX = Pattern.compile(
            "Maybe another instrument: (\\S+) \\(.*\\) can play it (as written|with --transpose (-?\\d+))\\.");

    @TempDir
    Path folder;

    private CommandRun mark(String notes, String... more) throws IOException {
        String file = ScoreText.file(folder.resolve("tune.musicxml"), notes);
        String[] words = new String[more.length + 4];
        System.arraycopy(new String[] {"mark", file, "--out", folder + "/out"}, 0, words, 0, 4);
        System.arraycopy(more, 0, words, 4, more.length);
        return CommandRun.of(words);
    }

    private static Matcher found(Pattern pattern, CommandRun run) {
        Matcher matcher = pattern.matcher(run.err());
        assertTrue(matcher.find(), run.err());
        return matcher;
    }

    @Test
    void keyThatIsNamedIsThatOfAuto() throws IOException {
        String notes = "F4 G4 A4 F4 C5 A4 F4 F4";
        String named = found(TRANSPOSE, mark(notes)).group(1);
        CommandRun auto = mark(notes, "--transpose", "auto");
        assertEquals(0, auto.code(), auto.err());
        assertTrue(auto.out().contains("(%+d)".formatted(Integer.parseInt(named))), auto.out());
    }

    @Test
    void instrumentIsNamedThatPlaysTheTune() throws IOException {
        String notes = "C5 C#5 D5 D#5 E5 F5 F#5 G5 G#5 A5 A#5 B5";
        CommandRun auto = mark(notes, "--transpose", "auto");
        assertEquals(1, auto.code());
        assertTrue(auto.err().contains("No transposition within an octave can be played either."), auto.err());
        Matcher box = found(BOX, auto);
        CommandRun there = box.group(3) == null
                ? mark(notes, "--instrument", box.group(1))
                : mark(notes, "--instrument", box.group(1), "--transpose", box.group(3));
        assertEquals(0, there.code(), there.err());
        assertEquals(box.group(1), found(BOX, mark(notes)).group(1));
    }

    @Test
    void whereNoInstrumentPlaysItThatIsSaid() throws IOException {
        CommandRun run = mark("C2 C8 C2 C8");
        assertTrue(run.err().contains("No instrument of the library was found to play it"), run.err());
    }
}
