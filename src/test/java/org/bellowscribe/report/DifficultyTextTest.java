package org.bellowscribe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.TermPoints;
import org.bellowscribe.difficulty.grading.Grade;
import org.bellowscribe.difficulty.grading.Term;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.junit.jupiter.api.Test;

class DifficultyTextTest {

    private static final Tune TUNE = TuneText.of("C4 D4 | E4 F4");

    private static final Difficulty DIFFICULTY = new Difficulty(
            "mine",
            List.of(
                    new TermPoints(Term.NOTES, 3.875, 0.4, 2),
                    new TermPoints(Term.RANGE, 7, 0.1, -1),
                    new TermPoints(Term.AIR, 0, 0.001, -1)),
            new Grade(2, "easy", 2));

    @Test
    void theTableSaysWhyAndThenEveryTerm() {
        assertEquals(
                List.of(
                        "  Grade 2, easy, at 2.3 points, most of them for notes (3.9 a second, 1.6 points), range beyond an"
                                + " octave (7.0 semitones, 0.7 points).",
                        "    term                                     figure                  weight  points  hardest",
                        "    notes                                      3.88 a second          0.400    1.55  from"
                                + " measure 2",
                        "    range beyond an octave                     7.00 semitones         0.100    0.70",
                        "    air marks, by length of note               0.00 a minute          0.001    0.00",
                        "    sum                                                                        2.25"),
                DifficultyText.lines(TUNE, DIFFICULTY));
    }
}
