package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Links, devices and pipes where files are expected. */
class SpecialFilesTest {

    private static final String SCALE = "D5 E5 F#5 G5 A5 B5 A5 G5";

    @TempDir
    Path folder;

    private Path tune;

    @BeforeEach
    void tune() throws IOException {
        tune = folder.resolve("scale.musicxml");
        ScoreText.file(tune, SCALE);
    }

    private Path pipe(String name) throws IOException, InterruptedException {
        Path pipe = folder.resolve(name);
        try {
            Process made = new ProcessBuilder("mkfifo", pipe.toString()).start();
            Assumptions.assumeTrue(made.waitFor() == 0, "skipped: no named pipes here");
        } catch (IOException e) {
            Assumptions.abort("skipped: no named pipes here");
        }
        return pipe;
    }

    private CommandRun atOnce(String... words) {
        return assertTimeoutPreemptively(Duration.ofSeconds(20), () -> CommandRun.of(words));
    }

    @Test
    void aPipeOrADeviceIsNotWaitedFor() throws Exception {
        String pipe = pipe("pipe.musicxml").toString();
        CommandRun run = atOnce("mark", pipe, tune.toString(), "--out", folder + "/out");
        assertEquals(1, run.code());
        assertTrue(
                run.err().contains("pipe.musicxml: error [unreadable] It is no file but a device or a pipe."),
                run.err());
        assertTrue(Files.exists(folder.resolve("out/scale.musicxml")), run.err());
    }

    @Test
    void aPipeIsNoFileOfPinsAndNoInstrument() throws Exception {
        String pipe = pipe("pipe.xml").toString();
        CommandRun pins = atOnce("mark", tune.toString(), "--pins", pipe, "--out", folder + "/out");
        assertTrue(pins.err().contains("cannot be read (it is no file but a device or a pipe)"), pins.err());
        CommandRun box = atOnce("mark", tune.toString(), "--instrument", pipe, "--out", folder + "/out");
        assertEquals(2, box.code());
        assertTrue(box.err().contains("cannot be read (it is no file but a device or a pipe)"), box.err());
    }

    @Test
    void whatALinkLeadsToIsNotWrittenOver() throws IOException {
        Path elsewhere = Files.writeString(folder.resolve("elsewhere.txt"), "mine");
        Path out = Files.createDirectories(folder.resolve("out"));
        try {
            Files.createSymbolicLink(out.resolve("scale.musicxml"), elsewhere);
        } catch (UnsupportedOperationException | IOException e) {
            Assumptions.abort("skipped: no links here");
        }
        CommandRun run = CommandRun.of("mark", tune.toString(), "--out", out.toString());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("error [unwritable]"), run.err());
        assertTrue(run.err().contains("it is a link, and links are not followed"), run.err());
        assertEquals("mine", Files.readString(elsewhere));
    }

    @Test
    void namesAndTitlesCannotCommandTheTerminal() throws IOException {
        Assumptions.assumeTrue("UTF-8".equals(System.getProperty("sun.jnu.encoding")), "skipped: no such names here");
        Path odd = folder.resolve("x\u202Ey\u001B[31mz.musicxml");
        ScoreText.write(odd, ScoreText.of("A\u2028B\u0085C\u202ED", SCALE));
        for (String[] words : new String[][] {
            {"mark", odd.toString(), "--out", folder + "/out"},
            {"mark", odd.toString(), "--instrument", "no\u001B]0;x"},
            {"fit", odd.toString(), "--instrument", "c-10", "--transpose", "0"},
            {"fit", odd.toString(), "--instrument", "c-10", "--transpose", "0", "--format", "csv"},
            {"strip", odd.toString(), "--out", folder + "/out2"}
        }) {
            CommandRun run = CommandRun.of(words);
            String all = run.out() + run.err();
            assertFalse(all.matches("(?s).*[\u001B\u0085\u202E\u2028].*"), all);
        }
    }
}
