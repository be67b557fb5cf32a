package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Step;
import org.junit.jupiter.api.Test;

/** The tunes of a sketch sound in C. */
class SoundingKeyTest {

    private static Arrangement above(int semitones) {
        Arrangement plain = new Sketch(1)
                .rest(BellowsDirection.PUSH)
                .push("1.3")
                .push("1.4")
                .arrangement();
        return new Arrangement(plain.tune(), plain.instrument(), plain.solution(), plain.style(), semitones);
    }

    @Test
    void theFirstNoteSaysWhichKeySoundsAndHowFarItIs() {
        Arrangement arrangement = above(2);
        Step first = arrangement.notes().get(0);
        assertEquals(
                List.of(new Mark.Words(first.event().index(), Topic.KEY, "sounds C (+2)")),
                new SoundingKey().marks(arrangement));
    }

    @Test
    void keyBelowTheSheetHasAMinus() {
        assertEquals(
                "sounds C (-12)",
                ((Mark.Words) new SoundingKey().marks(above(-12)).get(0)).text());
    }

    @Test
    void sheetInTheKeyThatSoundsSaysNothing() {
        assertEquals(List.of(), new SoundingKey().marks(above(0)));
    }
}
