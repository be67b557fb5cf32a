package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class KeyboardDrawingTest {

    private static final Instrument BOX =
            SmallInstrument.withBasses(SmallInstrument.of("G3/B3 C4/D4 E4/F4 G4/A4", "F#4/-"), "c/g C/G");

    @Test
    void textShowsPushAbovePull() {
        assertEquals("""
                Small <box> (small)
                Melody, right hand: row 1 is away from the bellows, button 1 nearest the chin. C4 is middle C.

                row 1, C            1    2    3    4
                            push   G3   C4   E4   G4
                            pull   B3   D4   F4   A4

                row 2               1
                            push  F#4
                            pull    -

                Basses, left hand: capital letter bass, small letter chord (m for minor); button 1 nearest the chin.

                column 1            1    2
                            push    c    C
                            pull    g    G
                """, KeyboardDrawing.text(BOX));
    }

    @Test
    void textLeavesAPlaceWithoutButtonEmpty() {
        Instrument gap =
                SmallInstrument.with(List.of(new Button(1, 1, null, null), new Button(1, 3, null, null)), List.of());
        assertTrue(KeyboardDrawing.text(gap).contains("row 1               1         3\n"));
    }

    @Test
    void pageIsWellFormed() throws Exception {
        String svg = KeyboardDrawing.svg(BOX);
        assertEquals(
                "Buttons of Small <box>",
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(svg)))
                        .getElementsByTagName("title")
                        .item(0)
                        .getTextContent());
    }

    @Test
    void melodyStandsRightOfTheBassesAsThePlayerHasIt() {
        assertTrue(x(BOX, "E4") > x(BOX, "F#4"));
        assertTrue(x(BOX, "F#4") > x(BOX, "C"));
    }

    @Test
    void boxForTheLeftHandedIsDrawnMirrored() {
        Instrument mirrored = SmallInstrument.with(
                BOX.buttons().stream()
                        .map(b -> new Button(b.row(), b.number(), b.push(), b.pull(), Hand.LEFT))
                        .toList(),
                BOX.leftHand());
        assertTrue(x(mirrored, "E4") < x(mirrored, "F#4"));
        assertTrue(x(mirrored, "F#4") < x(mirrored, "C"));
        assertTrue(KeyboardDrawing.text(mirrored).contains("Basses, right hand: "));
    }

    @Test
    void concertinaLiesAcrossThePage() {
        Instrument concertina = SmallInstrument.with(
                List.of(
                        new Button(1, 1, Pitch.parse("C3"), null, Hand.LEFT),
                        new Button(1, 2, Pitch.parse("C4"), null, Hand.RIGHT)),
                List.of());
        assertTrue(x(concertina, "C4") - x(concertina, "C3") > 20);
    }

    /** Returns where words stand on the page, in millimeters from the left. */
    private static double x(Instrument instrument, String words) {
        Matcher text = Pattern.compile("<text x=\"([\\d.]+)\" [^>]*>" + Pattern.quote(words) + "</text>")
                .matcher(KeyboardDrawing.svg(instrument));
        double x = -1;
        while (text.find()) {
            x = Double.parseDouble(text.group(1));
        }
        return x;
    }
}
