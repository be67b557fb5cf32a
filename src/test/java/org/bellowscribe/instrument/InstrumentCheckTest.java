package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class InstrumentCheckTest {

    private static final String C_ROW = "G3/B3 C4/D4 E4/F4 G4/A4 C5/B4 E5/D5 G5/F5";

    @Test
    void soundInstrumentRaisesNoDoubt() {
        assertEquals(List.of(), texts(SmallInstrument.withBasses(SmallInstrument.of(C_ROW), "c/g C/G")));
    }

    @Test
    void placeThatIsThereTwiceIsShown() {
        List<Button> buttons = Stream.of(1, 1)
                .map(number -> SmallInstrument.of("C4/D4").buttons().get(0))
                .toList();
        assertEquals(List.of("Button 1 of row 1 is there twice."), texts(SmallInstrument.with(buttons, List.of())));
    }

    @Test
    void silentButtonIsShown() {
        assertEquals(List.of("Button 2 of row 1 is silent both ways."), texts(SmallInstrument.of("C4/D4 -/-")));
    }

    @Test
    void noteFarOutsideIsShown() {
        assertEquals(
                List.of("Button 1 of row 1 sounds D9 on the pull, outside C2 to C8."),
                texts(SmallInstrument.of("C4/D9")));
    }

    @Test
    void wrongOctaveInsideARowIsShown() {
        assertEquals(
                List.of("Button 4 of row 1 sounds G3 on the push, which does not lie between its neighbors E4 and C5."),
                texts(SmallInstrument.of(C_ROW.replace("G4/", "G3/"))));
    }

    @Test
    void accidentalsAtTheChinEndAreNoWrongOctave() {
        assertEquals(List.of(), texts(SmallInstrument.of("F#4/G#4 " + C_ROW)));
    }

    @Test
    void missingDegreeOfTheHomeScaleIsShown() {
        assertEquals(
                List.of("No button gives A, which the scale of C (row 1) needs."),
                texts(SmallInstrument.of(C_ROW.replace("/A4", "/B4"))));
    }

    @Test
    void directionWithoutBassIsShown() {
        assertEquals(
                List.of("The left hand has no bass on the pull."),
                texts(SmallInstrument.withBasses(SmallInstrument.of(C_ROW), "c/g C/-")));
    }

    @Test
    void leftHandOfAnotherKeyIsShown() {
        assertEquals(
                List.of("The left hand has neither bass nor chord for C, the home keys."),
                texts(SmallInstrument.withBasses(SmallInstrument.of(C_ROW), "e/b E/B")));
    }

    private static List<String> texts(Instrument instrument) {
        return InstrumentCheck.of(instrument).stream()
                .map(diagnostic -> diagnostic.text())
                .toList();
    }
}
