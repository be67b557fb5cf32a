package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.remarks;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;

class TempoReadingTest {

    private static double tempo(String before) {
        return read(score(before + notes("D5:16"))).tempo().quartersPerMinute();
    }

    private static String metronome(String inside) {
        return "<direction><direction-type><metronome>" + inside + "</metronome></direction-type></direction>";
    }

    @Test
    void soundGivesQuartersAMinute() {
        assertEquals(104.5, tempo("<sound tempo=\"104.5\"/>"));
        assertTrue(
                read(score("<sound tempo=\"104\"/>" + notes("D5:16"))).tempo().stated());
    }

    @Test
    void metronomeCountsItsBeatWithDots() {
        assertEquals(
                180, tempo(metronome("<beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>120</per-minute>")));
        assertEquals(200, tempo(metronome("<beat-unit>half</beat-unit><per-minute>ca. 100</per-minute>")));
    }

    @Test
    void soundInADirectionIsExactWhereTheMarkIsRounded() {
        String direction = metronome("<beat-unit>quarter</beat-unit><per-minute>120</per-minute>")
                .replace("</direction>", "<sound tempo=\"119\"/></direction>");
        assertEquals(119, tempo(direction));
    }

    @Test
    void metricModulationIsNoTempo() {
        Tune tune =
                read(score(metronome("<beat-unit>quarter</beat-unit><beat-unit>eighth</beat-unit>") + notes("D5:16")));
        assertFalse(tune.tempo().stated());
    }

    @Test
    void impossibleTempoIsPassedOver() {
        assertFalse(read(score("<sound tempo=\"0\"/>" + notes("D5:16"))).tempo().stated());
    }

    @Test
    void firstOfSeveralTemposHoldsThroughout() {
        Tune tune = read(score("<sound tempo=\"100\"/>" + notes("D5:16"), "<sound tempo=\"60\"/>" + notes("D5:16")));
        assertEquals(100, tune.tempo().quartersPerMinute());
        assertEquals(
                "The tempo changes between 60 and 100 quarter notes a minute; the tune is read at 100 throughout.",
                remarks(tune, DiagnosticCode.ASSUMED).get(0));
    }

    @Test
    void titleNamesTheDanceWhereNoTempoIsStated() {
        Tune tune = read(score(notes("D5:16")));
        assertEquals(208, tune.tempo().quartersPerMinute());
        assertEquals(
                "The score states no tempo; it is read at 208 quarter notes a minute, usual for a reel in 4/4.",
                remarks(tune, DiagnosticCode.ASSUMED).get(0));
    }

    @Test
    void tempoThatNoPlayerCouldMeanIsNotFollowed() {
        Tune tune =
                read(score(metronome("<beat-unit>16th</beat-unit><per-minute>80</per-minute>") + notes("D5:8 E5:8")));
        assertEquals(208, tune.tempo().quartersPerMinute());
        assertFalse(tune.tempo().stated());
        assertEquals(
                "The score states 20 quarter notes a minute; no player could mean that, so it is read at 208 quarter notes a"
                        + " minute, usual for a reel in 4/4.",
                remarks(tune, DiagnosticCode.ODD_VALUE).get(0));
    }

    @Test
    void slowAndFastTemposThatAPlayerMayMeanAreFollowed() {
        assertEquals(40, tempo("<sound tempo=\"40\"/>"));
        assertEquals(360, tempo("<sound tempo=\"360\"/>"));
        assertEquals(208, tempo("<sound tempo=\"900\"/>"));
    }
}
