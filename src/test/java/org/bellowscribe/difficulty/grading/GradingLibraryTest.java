package org.bellowscribe.difficulty.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GradingLibraryTest {

    private static final String FILE = """
            <grading id="mine">
              <summary>Mine.</summary>
              <term id="reversals" points="%s"/>
              <grade name="easy" from="0"/>
              <grade name="hard" from="%s"/>
            </grading>
            """;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private Grading read(String text) throws DiagnosedException, IOException {
        Path file = folder.resolve("mine.xml");
        Files.writeString(file, text);
        return GradingLibrary.library().find(file.toString());
    }

    @Test
    void theUsualGradingWeighsEveryTermAndNamesNineGrades() {
        Grading usual = GradingLibrary.usual();
        assertEquals(EnumSet.allOf(Term.class), usual.weights().keySet());
        assertEquals(
                List.of(1, 2, 3, 4, 5, 6, 7, 8, 9),
                usual.grades().stream().map(Grade::number).toList());
    }

    @Test
    void aTermThatIsNotNamedWeighsNothing() throws DiagnosedException, IOException {
        Grading mine = read(FILE.formatted("0.5", "3"));
        assertEquals(0.5, mine.weight(Term.REVERSALS));
        assertEquals(0, mine.weight(Term.AIR));
    }

    @Test
    void aGradeBeginsAtItsPoints() throws DiagnosedException, IOException {
        Grading mine = read(FILE.formatted("0.5", "3"));
        assertEquals("easy", mine.grade(2.99).name());
        assertEquals("hard", mine.grade(3).name());
    }

    @Test
    void aNegativeWeightIsRefused() {
        DiagnosedException refused = assertThrows(DiagnosedException.class, () -> read(FILE.formatted("-1", "3")));
        assertTrue(refused.diagnostics().get(0).text().contains("\"-1\" of points in <term> is not allowed"));
    }

    @Test
    void gradesOutOfOrderAreRefusedWithTheirPlace() {
        DiagnosedException refused = assertThrows(DiagnosedException.class, () -> read(FILE.formatted("1", "0")));
        assertEquals(
                "mine.xml: line 5, column 32: error [bad-definition] Grade 2 begins at 0 points, no later than the one"
                        + " before.\n  Maybe write more points than 0.0.",
                refused.diagnostics().get(0).print("mine.xml"));
    }
}
