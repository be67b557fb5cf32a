package org.bellowscribe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class BellowsRowTest {

    private static List<BellowsRow> rows() {
        // Nine measures a second each, twice: a row takes eight of usual length and half of one.
        String nine = "C4*4" + " | C4*4".repeat(8);
        List<Integer> twice = List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 0, 1, 2, 3, 4, 5, 6, 7, 8);
        Played played = new Played(TuneText.of(nine, 240, twice), 5000);
        played.pull(3500, 1).air(AirUse.LIGHT, 2500);
        for (int i = 0; i < 4; i++) {
            played.push(1000, 1).pull(1000, 1);
        }
        return BellowsRow.of(played.decided());
    }

    @Test
    void placesAreCountedThroughAllRows() {
        List<BellowsRow> rows = rows();
        assertEquals(List.of(0, 5, 9, 14), rows.stream().map(BellowsRow::first).toList());
        assertEquals(List.of(5, 9, 14, 18), rows.stream().map(BellowsRow::end).toList());
    }

    @Test
    void eachRowTellsWhatItShows() throws Exception {
        assertEquals(
                "Measures 1-5, 1st time: from 50 to 85 percent open, between 50 and 85, air pressed once",
                new SvgText(rows().get(0).svg()).root().getAttribute("aria-label"));
    }

    @Test
    void rowsLieInsideTheirFrame() throws Exception {
        SvgText svg = new SvgText(rows().get(0).svg());
        assertEquals(
                1,
                svg.elements("rect").stream()
                        .filter(rect -> rect.getParentNode()
                                .getAttributes()
                                .getNamedItem("class")
                                .getNodeValue()
                                .equals("frame"))
                        .count());
    }
}
