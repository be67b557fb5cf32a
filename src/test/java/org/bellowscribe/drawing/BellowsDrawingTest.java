package org.bellowscribe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class BellowsDrawingTest {

    private static final Tune TWICE = TuneText.of("C4*4 | D4*4", 240, List.of(0, 1, 0, 1));

    /** From half open a second's push and pull, the air button giving 2 of the 10 RU.s back; without it closed at once. */
    private static Played played() {
        return new Played(TWICE, 5000).push(3500, 1).pull(3500, 1).air(AirUse.LIGHT, 2500);
    }

    private static SvgText drawing(Played played) throws Exception {
        return new SvgText(BellowsDrawing.of(played.decided()));
    }

    @Test
    void everyPlaceOfThePerformanceIsDrawn() throws Exception {
        SvgText svg = drawing(played());
        assertEquals("push", svg.byId("bellows-0").getAttribute("class"));
        assertEquals("pull", svg.byId("bellows-3").getAttribute("class"));
        assertTrue(svg.elements("*").stream()
                .noneMatch(each -> each.getAttribute("id").equals("bellows-4")));
    }

    @Test
    void pushGoesDownAndEachStrokeBeginsWhereTheOneBeforeEnded() throws Exception {
        SvgText svg = drawing(played());
        Element push = svg.byId("bellows-0");
        assertTrue(SvgText.number(push, "y2") > SvgText.number(push, "y1"));
        Element next =
                (Element) svg.byId("bellows-1").getElementsByTagName("line").item(0);
        assertEquals(push.getAttribute("x2"), next.getAttribute("x1"));
        assertEquals(push.getAttribute("y2"), next.getAttribute("y1"));
    }

    @Test
    void airIsAnUprightStrokeAsLongAsWhatItMoves() throws Exception {
        SvgText svg = drawing(played());
        Element air = svg.ofClass("air").get(0);
        assertEquals(air.getAttribute("x1"), air.getAttribute("x2"));
        // A quarter of the 10 RU.s, and the curve is 118 units high.
        assertEquals(29.5, SvgText.number(air, "y1") - SvgText.number(air, "y2"), 0.11);
        assertEquals(List.of("light air", "light air"), svg.words("air"));
    }

    @Test
    void bellowsThatWouldRunOutWithoutAirEndInACross() throws Exception {
        // 1.5, the air left out 2.5, and a push of 3.5: under 1 in the second playing.
        assertEquals(List.of("closed"), drawing(played()).words("end"));
    }

    @Test
    void withoutAirThereIsNothingToLeaveOut() throws Exception {
        SvgText svg = drawing(new Played(TWICE, 5000).push(1000, 1).pull(1000, 1));
        assertEquals(List.of(), svg.ofClass("without-air"));
        assertEquals(List.of(), svg.words("air"));
    }

    @Test
    void playingsAreToldApart() throws Exception {
        SvgText svg = drawing(played());
        assertEquals(List.of("1-2, playing 1", "1-2, playing 2"), svg.words("section"));
        assertEquals(1, svg.ofClass("later-pass").size());
    }

    @Test
    void descriptionSaysWhereTheBellowsComeNearestToTheirEnds() throws Exception {
        assertEquals(
                "How far open the bellows are over one playing, through every repeat: at the start 50 %."
                        + " Least open after measure 1: 15 %. Most open after measure 2: 50 %."
                        + " The air button is pressed in measure 2.",
                drawing(played()).byId("bellows-description").getTextContent());
    }

    @Test
    void titleIsText() throws Exception {
        Tune odd = new Tune(
                "<script>\"&'\u202E \uD83E\uDE97",
                TWICE.part(),
                TWICE.measures(),
                TWICE.events(),
                TWICE.harmonies(),
                TWICE.tempo(),
                TWICE.playOrder(),
                List.of());
        SvgText svg = drawing(new Played(odd, 5000).push(1000, 1).pull(1000, 1));
        assertEquals(List.of("<script>\"&'\uFFFD \uD83E\uDE97"), svg.words("title"));
        assertEquals(
                "Bellows: <script>\"&'\uFFFD \uD83E\uDE97",
                svg.byId("bellows-title").getTextContent());
    }

    @Test
    void nothingIsColored() {
        assertFalse(BellowsDrawing.of(played().decided()).matches("(?s).*(#[0-9a-f]{3,6}\"|rgb|hsl).*"));
    }
}
