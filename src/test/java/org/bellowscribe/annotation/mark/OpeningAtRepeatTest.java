package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

/** The bellows hold 12 RU.s. */
class OpeningAtRepeatTest {

    private static List<String> words(Sketch sketch) throws DiagnosedException {
        return Texts.words(new OpeningAtRepeat(), sketch.arrangement(StyleLibrary.find(StyleLibrary.DEFAULT_ID)));
    }

    private static Sketch twoSections() {
        return new Sketch(1).push("1.3").open(6000).measure().pull("1.3").open(4000);
    }

    @Test
    void theSecondSectionSaysItWhereItsRepeatComesBack() throws DiagnosedException {
        assertEquals(List.of("1: open 1/3"), words(twoSections().order(1, 1, 2, 2)));
    }

    @Test
    void theStartHasItsOwnMark() throws DiagnosedException {
        assertEquals(List.of(), words(twoSections().order(1, 2, 1, 2)));
    }

    @Test
    void aTuneWithoutRepeatsSaysNothing() throws DiagnosedException {
        assertEquals(List.of(), words(twoSections()));
    }
}
