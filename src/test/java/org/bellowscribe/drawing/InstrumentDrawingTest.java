package org.bellowscribe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.TuneText;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class InstrumentDrawingTest {

    private static Played played() {
        return new Played(TuneText.of("C4 C4 D4 r", 60, List.of(0, 0)), 5000)
                .push(1000, 1)
                .bass("0", "1")
                .push(1000, 1)
                .pull(2000, 1)
                .push(0);
    }

    private static SvgText drawing() throws Exception {
        return new SvgText(InstrumentDrawing.of(played().decided()));
    }

    private static List<String> words(Element button) {
        return IntStream.range(0, button.getElementsByTagName("text").getLength())
                .mapToObj(i -> button.getElementsByTagName("text").item(i).getTextContent())
                .toList();
    }

    @Test
    void buttonTellsItsNotesAndHowOftenItIsStruckInOnePlaying() throws Exception {
        Element button = drawing().byId("button-1-1");
        assertEquals("used", button.getAttribute("class"));
        assertEquals(List.of("C4", "4×", "D4", "2×", "1"), words(button));
    }

    @Test
    void leftHandIsCountedByItself() throws Exception {
        assertEquals(List.of("C", "2×", "G", "1"), words(drawing().byId("bass-1-1")));
    }

    @Test
    void buttonThatIsNotUsedHasNoNumberBesideIt() throws Exception {
        Element button = drawing().byId("button-1-2");
        assertEquals("unused", button.getAttribute("class"));
        assertEquals(List.of("E4", "F4", "2"), words(button));
    }

    @Test
    void descriptionSaysWhichButtonsAreUsedMost() throws Exception {
        assertEquals(
                "Small box. 1 of 8 melody buttons are used; most often 1.1 (4 times pushed, 2 pulled)."
                        + " 1 of 2 buttons of the left hand are used; most often 1.1 (2 times pushed, 0 pulled).",
                drawing().byId("instrument-description").getTextContent());
    }

    @Test
    void noTwoButtonsOfTheLibraryLieOnEachOther() {
        InstrumentLibrary.all().forEach(entry -> {
            List<KeyboardFaces.Face> faces = new KeyboardFaces(entry.instrument()).faces();
            for (KeyboardFaces.Face one : faces) {
                for (KeyboardFaces.Face other : faces) {
                    double distance = Math.hypot(one.x() - other.x(), one.y() - other.y());
                    assertTrue(
                            one == other || distance > 2 * KeyboardFaces.RADIUS,
                            entry.instrument().id());
                }
            }
        });
    }
}
