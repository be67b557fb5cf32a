package org.bellowscribe.learning;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.report.LearnedText;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A manner of its own for each of the two blind markings, learned from the usual one: agreement on each tune with points
 * learned from the others, beside that of the usual manner. Reports in {@code target/learning-teachers-*.txt}. Runs with
 * {@code -Dmeasure=learning} only.
 */
@Tag("learning")
class TeachersTest {

    private static final int TUNES = 16;

    @Test
    void aMannerOfTheFirstAgreesBetterOnTunesLeftOut() throws IOException {
        learn("first");
    }

    @Test
    void aMannerOfTheSecondAgreesBetterOnTunesLeftOut() throws IOException {
        learn("second");
    }

    private static void learn(String marking) throws IOException {
        List<TaughtTune> tunes = TeachersMarks.of(marking);
        Learned learned = Learner.learn(tunes, MarkedBook.USUAL, TUNES);
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "learning-teachers-" + marking + ".txt"), LearnedText.lines(learned));
        Agreement before = learned.leftOut().before();
        Agreement after = learned.leftOut().after();
        assertTrue(after.buttons().same() >= before.buttons().same(), () -> before + "\n" + after);
        assertTrue(after.directions().same() >= before.directions().same(), () -> before + "\n" + after);
    }
}
