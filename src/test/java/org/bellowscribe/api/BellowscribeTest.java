package org.bellowscribe.api;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
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

/** The library, as another program uses it: also sent elsewhere, and called by several threads at once. */
class BellowscribeTest {

    private static final List<String> TUNES = List.of("two-ducks", "the-ferry-bell", "dots-first-polka");

    private static byte[] score(String tune) throws IOException {
        return Files.readAllBytes(Path.of("samples", "book", tune + ".musicxml"));
    }

    @SuppressWarnings("unchecked")
    private static <T> T sent(T object) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(object);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }

    @Test
    void manyThreadsGiveWhatOneGives() throws Exception {
        Bellowscribe step = sent(Bellowscribe.on("dg-21"));
        List<byte[]> scores = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (String tune : TUNES) {
                scores.add(score(tune));
            }
        }
        ForkJoinPool pool = new ForkJoinPool(4);
        List<MarkedScore> marked =
                pool.submit(() -> scores.parallelStream().map(step).toList()).get();
        pool.shutdown();
        for (int i = 0; i < TUNES.size(); i++) {
            MarkedScore alone = sent(Bellowscribe.on("dg-21").apply(scores.get(i)));
            assertTrue(new String(alone.sheet(), StandardCharsets.UTF_8).contains("bellowscribe-buttons"));
            for (int j = i; j < scores.size(); j += TUNES.size()) {
                assertArrayEquals(alone.sheet(), marked.get(j).sheet());
                assertEquals(alone.record(), marked.get(j).record());
                assertEquals(alone.remarks(), marked.get(j).remarks());
            }
        }
    }

    @Test
    void stepsOneByOneGiveTheSame() throws IOException {
        Bellowscribe bellowscribe = Bellowscribe.on("gc-21").inManner("learner").inStyle("german");
        DecidedScore decided = bellowscribe.decide(score("two-ducks"), "two-ducks");
        assertTrue(decided.isPlayable());
        assertTrue(decided.cost() > 0);
        MarkedScore whole = bellowscribe.mark(score("two-ducks"), "two-ducks");
        assertArrayEquals(whole.sheet(), decided.marked().sheet());
        assertEquals(whole.record(), decided.marked().record());
        assertTrue(whole.record().contains("\"instrument\": \"gc-21\""), whole.record());
        assertTrue(whole.record().contains("\"cost\": {\"total\": " + decided.cost() + ","), whole.record());
    }

    @Test
    void whatIsNoScoreComesBackAsARemark() {
        MarkedScore marked = Bellowscribe.on("dg-21").apply("no score".getBytes(StandardCharsets.UTF_8));
        assertFalse(marked.isMarked());
        assertEquals("error", marked.remarks().get(0).severity());
        assertEquals("not-xml", marked.remarks().get(0).code());
        assertTrue(marked.record().contains("\"refused\""), marked.record());
    }

    @Test
    void otherMarksChangeTheSheetOnly() throws IOException {
        Bellowscribe usual = Bellowscribe.on("dg-21");
        MarkedScore full = usual.apply(score("two-ducks"));
        MarkedScore thin = usual.printing("buttons").apply(score("two-ducks"));
        assertTrue(thin.sheet().length < full.sheet().length);
        assertEquals(
                usual.decide(score("two-ducks"), "x").cost(),
                usual.printing("buttons").decide(score("two-ducks"), "x").cost());
    }

    @Test
    void unknownNamesAreRefusedAtOnce() {
        Bellowscribe usual = Bellowscribe.on("dg-21");
        assertThrows(IllegalArgumentException.class, () -> Bellowscribe.on("dg-12"));
        assertThrows(IllegalArgumentException.class, () -> usual.inManner("lerner"));
        assertThrows(IllegalArgumentException.class, () -> usual.inStyle("germane"));
        assertThrows(IllegalArgumentException.class, () -> usual.printing("button"));
    }
}
