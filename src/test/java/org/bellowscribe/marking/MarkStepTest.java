package org.bellowscribe.marking;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

/** The example runs as an engine runs it: sent, then called by several threads at once. */
class MarkStepTest {

    private static final List<String> TUNES = List.of("two-ducks", "the-ferry-bell", "dots-first-polka");

    private static List<byte[]> scores() throws IOException {
        List<byte[]> scores = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (String tune : TUNES) {
                scores.add(Files.readAllBytes(Path.of("samples", "book", tune + ".musicxml")));
            }
        }
        return scores;
    }

    private static MarkStep sent(MarkStep step) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(step);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (MarkStep) in.readObject();
        }
    }

    @Test
    void manyThreadsGiveWhatOneGives() throws Exception {
        MarkStep step = sent(new MarkStep("dg-21", "along-the-row"));
        List<byte[]> scores = scores();
        ForkJoinPool pool = new ForkJoinPool(4);
        List<MarkStep.Marked> marked =
                pool.submit(() -> scores.parallelStream().map(step).toList()).get();
        pool.shutdown();
        for (int i = 0; i < TUNES.size(); i++) {
            byte[] alone =
                    new MarkStep("dg-21", "along-the-row").apply(scores.get(i)).sheet();
            assertTrue(new String(alone, StandardCharsets.UTF_8).contains("bellowscribe-buttons"));
            for (int j = i; j < scores.size(); j += TUNES.size()) {
                assertArrayEquals(alone, marked.get(j).sheet());
            }
        }
    }

    @Test
    void whatIsNoScoreComesBackAsARemark() {
        MarkStep.Marked marked = new MarkStep("dg-21", "learner").apply("no score".getBytes(StandardCharsets.UTF_8));
        assertEquals(0, marked.sheet().length);
        assertTrue(
                marked.remarks().get(0).contains("error [not-xml]"),
                marked.remarks().toString());
    }
}
