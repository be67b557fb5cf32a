package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import org.bellowscribe.cli.option.CommandWords;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Marking again whatever is saved. */
class WatchTest {

    private static final String GOOD = "D5 E5 F#5 G5 A5 B5 A5 G5";
    private static final long PATIENCE_MILLISECONDS = 20_000;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final AtomicBoolean ended = new AtomicBoolean();
    private Thread thread = new Thread();

    @BeforeEach
    void book() throws IOException {
        ScoreText.file(folder.resolve("book/a.musicxml"), GOOD);
        ScoreText.file(folder.resolve("book/b.musicxml"), GOOD);
    }

    @AfterEach
    void end() throws InterruptedException {
        ended.set(true);
        thread.join();
    }

    private void watch(String... more) throws Exception {
        List<String> line = new ArrayList<>(List.of(folder + "/book", "--watch"));
        line.addAll(List.of(more));
        CommandWords words = CommandWords.parse("mark", MarkOptions.all(), line);
        Terminal terminal = new Terminal(InputStream.nullInputStream(), new PlainStream(out), new PlainStream(err));
        thread = new Thread(() -> {
            try {
                Watch.loop(words, terminal, ended::get);
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        });
        thread.start();
        await(() -> err().contains("Ctrl-C ends."));
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private void await(Callable<Boolean> isSo) throws Exception {
        long end = System.currentTimeMillis() + PATIENCE_MILLISECONDS;
        while (!isSo.call()) {
            assertTrue(System.currentTimeMillis() < end, () -> out() + err());
            Thread.sleep(20);
        }
    }

    private boolean isMarked(String name) throws IOException {
        Path file = folder.resolve(name);
        return Files.exists(file) && Files.readString(file).contains("bellowscribe-buttons");
    }

    @Test
    void scoresAreCounted() throws Exception {
        watch("--out", folder + "/out");
        assertTrue(err().contains("Watching 2 scores;"), err());
    }

    @Test
    void oneScoreIsOne() throws Exception {
        Files.delete(folder.resolve("book/b.musicxml"));
        watch("--out", folder + "/out");
        assertTrue(err().contains("Watching 1 score;"), err());
    }

    @Test
    void scoreThatIsSavedIsMarkedAgainAndNoOther() throws Exception {
        watch("--out", folder + "/out");
        assertTrue(isMarked("out/a.musicxml") && isMarked("out/b.musicxml"));
        out.reset();
        Files.delete(folder.resolve("out/a.musicxml"));
        Files.delete(folder.resolve("out/b.musicxml"));
        ScoreText.file(folder.resolve("book/a.musicxml"), GOOD.replace("B5", "C#6"));
        await(() -> isMarked("out/a.musicxml"));
        await(() -> out().contains("least"));
        assertEquals(1, out().lines().filter(line -> line.contains("least")).count());
        assertFalse(Files.exists(folder.resolve("out/b.musicxml")));
    }

    @Test
    void halfAFileIsWaitedForAndTheWholeIsMarked() throws Exception {
        watch("--out", folder + "/out");
        Files.delete(folder.resolve("out/a.musicxml"));
        String score = ScoreText.of("a", GOOD.replace("B5", "C#6"));
        Files.writeString(folder.resolve("book/a.musicxml"), score.substring(0, score.length() / 2));
        Thread.sleep(500);
        Files.writeString(folder.resolve("book/a.musicxml"), score);
        await(() -> isMarked("out/a.musicxml"));
        assertFalse(err().contains("not-xml"), err());
    }

    @Test
    void pinsSettingsAndNewScoresCountToo() throws Exception {
        watch("--out", folder + "/out");
        ScoreText.write(folder.resolve("book/a.pins.xml"), "<pins><pin measure=\"1\" note=\"2\" finger=\"3\"/></pins>");
        await(() -> out().contains("1 pin kept"));
        ScoreText.write(folder.resolve("book/bellowscribe.xml"), "<settings record=\"yes\"/>");
        await(() -> Files.exists(folder.resolve("out/b.record.json")));
        ScoreText.file(folder.resolve("book/c.musicxml"), GOOD);
        await(() -> isMarked("out/c.musicxml"));
    }

    @Test
    void resultInPlaceOfItsScoreIsNoNews() throws Exception {
        watch("--in-place");
        int lines = (int) out().lines().count();
        Thread.sleep(600);
        assertEquals(lines, (int) out().lines().count());
        ScoreText.file(folder.resolve("book/b.musicxml"), GOOD.replace("B5", "C#6"));
        await(() -> isMarked("book/b.musicxml"));
    }

    @Test
    void definitionThatIsWrongForAWhileEndsNothing() throws Exception {
        Path manner = folder.resolve("mine.xml");
        String text = "<manner id=\"mine\" based-on=\"learner\"><summary>A.</summary></manner>";
        ScoreText.write(manner, text);
        watch("--manner", manner.toString(), "--out", folder + "/out");
        Files.writeString(manner, "<manner>\n</manner>");
        await(() -> err().contains("error [bad-definition]"));
        out.reset();
        Files.writeString(manner, text.replace("A.", "B."));
        await(() -> out().contains("least"));
    }

    @Test
    void whatDoesNotGoWithItIsWrongUse() {
        String book = folder + "/book";
        assertEquals(
                2,
                CommandRun.of("mark", book, "--watch", "--check", "--out", folder + "/out")
                        .code());
        assertEquals(
                2,
                CommandRun.of("mark", "@-", "--watch", "--out", folder + "/out").code());
        assertEquals(2, CommandRun.piped(new byte[0], "mark", "-", "--watch").code());
    }
}
