package org.bellowscribe.instrument.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.Instrument;
import org.junit.jupiter.api.Test;

/** The instrument files among the samples. */
class SampleInstrumentsTest {

    @Test
    void twoAndAHalfRowsChangeWhatTheirFileSays() {
        Instrument box = InstrumentLines.find("samples/instruments/two-and-a-half-rows.xml");
        assertEquals("Bb4 G#4", InstrumentLines.sounds(box, "1.1 1.1'"));
        assertEquals("E5 D5", InstrumentLines.sounds(box, "2.5 2.5'"));
        assertEquals("C5 D5", InstrumentLines.sounds(box, "3.2 3.2'"));
        assertEquals(
                List.of("2.1 b e", "3.1 f# f#"),
                InstrumentLines.leftHand(box).stream()
                        .filter(line -> line.startsWith("2.1") || line.startsWith("3.1"))
                        .toList());
        assertEquals(34, box.bellows().capacity());
    }

    @Test
    void leftHandedBoxHasItsMelodyUnderTheLeftHand() {
        Instrument box = InstrumentLines.find("samples/instruments/left-handed.xml");
        assertEquals(Hand.LEFT, box.buttons().get(0).hand());
        assertEquals(List.of(), box.leftHand());
        assertEquals(List.of(-1, 0, 0), box.air().voices());
    }
}
