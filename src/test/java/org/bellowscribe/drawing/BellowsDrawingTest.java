package org.bellowscribe.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
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

    /** Where a line begins and where it ends, x and y. */
    private static double[][] ends(Element path) {
        double[] all = Pattern.compile("-?[0-9.]+")
                .matcher(path.getAttribute("d"))
                .results()
                .mapToDouble(number -> Double.parseDouble(number.group()))
                .toArray();
        double[] end = {all[0], all[1]};
        for (int i = 2; i < all.length; i++) {
            end[i % 2] += all[i];
        }
        return new double[][] {{all[0], all[1]}, end};
    }

    @Test
    void everyTurnBeginsALineOfItsOwn() throws Exception {
        SvgText svg = drawing(played());
        assertEquals(2, svg.ofClass("push").size());
        assertEquals(2, svg.ofClass("pull").size());
    }

    @Test
    void pushGoesDownAndEachLineBeginsWhereTheOneBeforeEnded() throws Exception {
        SvgText svg = drawing(played());
        double[][] push = ends(svg.ofClass("push").get(0));
        assertTrue(push[1][1] > push[0][1]);
        assertArrayEquals(push[1], ends(svg.ofClass("pull").get(0))[0], 1e-9);
    }

    @Test
    void airIsAnUprightStrokeAsLongAsWhatItMoves() throws Exception {
        SvgText svg = drawing(played());
        Element air = svg.elements("line").stream()
                .filter(line -> line.getAttribute("class").equals("air"))
                .findFirst()
                .orElseThrow();
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
        assertEquals(List.of("1-2, 1st time", "1-2, 2nd time"), svg.words("section"));
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
