package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.ATTRIBUTES;
import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.sounds;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;

class TimewiseScoreTest {

    private static String measure(String number, String... parts) {
        StringBuilder measure = new StringBuilder("<measure number=\"" + number + "\">");
        for (int i = 0; i < parts.length; i++) {
            measure.append("<part id=\"P")
                    .append(i + 1)
                    .append("\">")
                    .append(parts[i])
                    .append("</part>");
        }
        return measure.append("</measure>").toString();
    }

    private static String timewise(String... measures) {
        return "<score-timewise><work><work-title>Harvest Reel</work-title></work>" + String.join("", measures)
                + "</score-timewise>";
    }

    @Test
    void measuresAreRegroupedByPart() {
        Tune tune = read(timewise(
                measure("1", ATTRIBUTES + notes("D5:8 E5:8"), ATTRIBUTES + notes("D3:16 +A3:16")),
                measure("2", notes("F#5:16"), notes("D3:16 +A3:16"))));
        assertEquals("D5*2/1 E5*2/1 F#5*4/1", sounds(tune));
        assertEquals("2", tune.measures().get(1).number());
    }

    @Test
    void noteIndicesStayThoseOfTheFile() {
        Tune tune = read(timewise(
                measure("1", ATTRIBUTES + notes("D5:8 E5:8"), ATTRIBUTES + notes("D3:16 +A3:16")),
                measure("2", notes("F#5:16"), notes("D3:16 +A3:16"))));
        assertEquals(List.of(4), tune.events().get(2).noteIndices());
    }

    @Test
    void partThatIsMissingInAMeasureStaysInStep() {
        Tune tune = read(
                timewise(
                        measure("1", ATTRIBUTES + notes("D5:16")),
                        measure("2", notes("E5:16"), ATTRIBUTES + notes("D3:16"))),
                new ReadingOptions("P2", null, null));
        assertEquals(List.of("0@0/1:r*4/1", "1@0/1:D3*4/1"), ScoreText.events(tune));
    }
}
