package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SectionsTest {

    private static String ends(Tune tune) {
        Sections sections = new Sections(tune);
        return tune.measures().stream()
                .filter(measure -> sections.ends(measure.index()))
                .map(measure -> String.valueOf(measure.index() + 1))
                .collect(Collectors.joining(" "));
    }

    @Test
    void sectionEndsWhereThePlayerGoesBack() {
        assertEquals("2 4", ends(TuneText.of("D4*4 | D4*4 | D4*4 | D4*4", 120, List.of(0, 1, 0, 1, 2, 3))));
    }

    /** Measure 2 is the first ending, measure 3 the second; 4 and 5 are repeated. */
    @Test
    void jumpOverAFirstEndingEndsNothing() {
        Tune tune = TuneText.of("D4*4 | D4*4 | D4*4 | D4*4 | D4*4", 120, List.of(0, 1, 0, 2, 3, 4, 3, 4));
        assertEquals("2 3 5", ends(tune));
    }

    @Test
    void pickUpBeforeARepeatIsNoSection() {
        Tune tune = TuneText.of("D4 | D4*4 | D4*4", 120, List.of(0, 1, 2, 1, 2));
        assertEquals("3", ends(tune));
    }

    @Test
    void sectionClosesOnItsLongestLateNote() {
        Tune tune = TuneText.of("D4 F#4 A4 F#4 | A4 G4*2 D5");
        Sections sections = new Sections(tune);
        assertTrue(sections.closes(tune.events().get(5)));
        assertFalse(sections.closes(tune.events().get(6)));
    }
}
