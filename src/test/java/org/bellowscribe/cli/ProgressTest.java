package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.batch.Source;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private long now;

    private Progress progress(boolean watched, int files) {
        List<Source> sources = IntStream.range(0, files)
                .mapToObj(i -> new Source(Path.of("tune" + i + ".mxl"), "", Path.of("out")))
                .toList();
        PlainStream stream = new PlainStream(err);
        return new Progress(
                new Terminal(InputStream.nullInputStream(), stream, stream, watched, false), sources, () -> now);
    }

    private void countAfter(Progress progress, double seconds) {
        now += (long) (seconds * 1e9);
        progress.count();
    }

    @Test
    void saysWhatIsDoneHowFastWhatIsLeftAndWhatIsNext() {
        Progress progress = progress(true, 101);
        assertEquals("0/101, tune0.mxl", progress.line());
        countAfter(progress, 0.5);
        assertEquals("1/101, 2 a second, 50 s left, tune1.mxl", progress.line());
    }

    @Test
    void slowWorkIsCountedByTheMinute() {
        Progress progress = progress(true, 1000);
        countAfter(progress, 4);
        assertEquals("1/1000, 15 a minute, 1.1 h left, tune1.mxl", progress.line());
    }

    @Test
    void rateIsThatOfTheLastTwentySoThatUnchangedTunesPromiseNothing() {
        Progress progress = progress(true, 140);
        for (int i = 0; i < 60; i++) {
            countAfter(progress, 0);
        }
        for (int i = 0; i < 20; i++) {
            countAfter(progress, 1);
        }
        assertEquals("80/140, 1 a second, 1 min left, tune80.mxl", progress.line());
    }

    @Test
    void nothingIsShownWhereNobodyWatches() {
        progress(false, 2).show();
        progress(false, 2).hide();
        assertEquals("", err.toString(StandardCharsets.UTF_8));
        progress(true, 2).show();
        assertEquals("\r\u001B[K0/2, tune0.mxl", err.toString(StandardCharsets.UTF_8));
    }
}
