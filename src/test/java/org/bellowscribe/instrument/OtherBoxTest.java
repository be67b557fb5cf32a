package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.junit.jupiter.api.Test;

class OtherBoxTest {

    private static OtherBox box(String own, String other) throws DiagnosedException {
        OtherBox box = OtherBox.of(InstrumentLibrary.find(own), InstrumentLibrary.find(other));
        assertNotNull(box);
        return box;
    }

    @Test
    void aFourthButtonStartIsShiftedByOne() throws DiagnosedException {
        assertEquals(1, box("dg-21", "dg-21-fourth-button").shift());
        assertEquals(-1, box("dg-21-fourth-button", "dg-21").shift());
        assertEquals(0, box("dg-21", "dg-21-sixth").shift());
    }

    @Test
    void boxesInOtherKeysAndConcertinasShareNothingOfUse() throws DiagnosedException {
        assertNull(OtherBox.of(InstrumentLibrary.find("dg-21"), InstrumentLibrary.find("anglo-cg-20")));
    }

    @Test
    void theSharedBoxHasWhatBothHaveInTheSamePlace() throws DiagnosedException {
        Instrument own = InstrumentLibrary.find("dg-21");
        OtherBox other = box("dg-21", "dg-21-sixth");
        Instrument shared = SharedBox.of(own, List.of(other));
        Button first = shared.buttons().get(0);
        assertEquals("1.1", first.id());
        assertEquals("F#3", String.valueOf(first.push()));
        assertNull(first.pull());
        assertTrue(shared.name().endsWith("and dg-21-sixth alike"), shared.name());
    }
}
