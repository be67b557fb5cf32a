package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** On dg-21 A4 has two reeds of 1 RU each, so 17 s of it are 34 RU.s. */
class CalibrationTest {

    private static Calibration calibrate(
            String id,
            double note,
            @Nullable Double bass,
            @Nullable Double chord,
            @Nullable Double air,
            @Nullable Double light)
            throws DiagnosedException {
        return Calibration.of(
                InstrumentLibrary.find(id), new Timings(Pitch.parse("A4"), note, bass, chord, air, light));
    }

    private static Map<String, Double> figures(Calibration calibration) {
        return calibration.figures().stream()
                .collect(Collectors.toMap(Calibration.Figure::name, Calibration.Figure::after));
    }

    private static String onlyRemark(Calibration calibration) {
        List<Diagnostic> remarks = calibration.remarks();
        assertEquals(1, remarks.size(), remarks.toString());
        return remarks.get(0).text();
    }

    @Test
    void noteAloneGivesTheCapacity() throws DiagnosedException {
        assertEquals(Map.of("capacity", 34.0), figures(calibrate("dg-21", 17, null, null, null, null)));
    }

    @Test
    void everyOtherTimingGivesItsFlow() throws DiagnosedException {
        Map<String, Double> figures = figures(calibrate("dg-21", 17, 4.25, 5.0, 2.0, 4.0));
        assertEquals(34 / 4.25 - 2, figures.get("bass-flow"), 1e-9);
        assertEquals(34 / 5.0 - 2, figures.get("chord-flow"), 1e-9);
        assertEquals(34 / 2.0, figures.get("full-flow"), 1e-9);
        assertEquals(34 / 4.0, figures.get("light-flow"), 1e-9);
        assertEquals((34 / 5.0 - 2) * 2.7 / 4, figures.get("chord-without-third-flow"), 1e-9);
    }

    @Test
    void timesOfTheModelGiveTheFiguresOfTheModel() throws DiagnosedException {
        Map<String, Double> figures = figures(calibrate("dg-21", 20, 40.0 / 8, 40.0 / 6, 2.0, 40.0 / 7));
        assertEquals(
                List.of(40.0, 6.0, 4.0, 20.0, 7.0),
                List.of("capacity", "bass-flow", "chord-flow", "full-flow", "light-flow").stream()
                        .map(name -> Math.round(1e9 * figures.getOrDefault(name, -1.0)) / 1e9)
                        .toList());
    }

    @Test
    void chordWithoutThirdsIsWhatWasTimedWhereNoneHasOne() throws DiagnosedException {
        Map<String, Double> figures = figures(calibrate("adg-31-no-thirds", 20, null, 8.0, null, null));
        assertEquals(40.0 / 8 - 2, figures.get("chord-without-third-flow"), 1e-9);
        assertEquals(null, figures.get("chord-flow"));
    }

    @Test
    void halfASecondOfTheWatchIsTold() throws DiagnosedException {
        Calibration.Figure capacity =
                calibrate("dg-21", 17, null, null, null, null).figures().get(0);
        assertEquals(List.of(33.0, 35.0), List.of(capacity.least(), capacity.most()));
    }

    @Test
    void moreAirCannotLastLonger() throws DiagnosedException {
        assertTrue(onlyRemark(calibrate("dg-21", 10, 10.0, null, null, null))
                .startsWith("--with-bass (10 s) must be shorter"));
        assertTrue(onlyRemark(calibrate("dg-21", 10, null, 12.0, null, null)).startsWith("--with-chord (12 s)"));
        assertTrue(onlyRemark(calibrate("dg-21", 10, null, null, 11.0, null)).startsWith("--air (11 s)"));
        assertTrue(onlyRemark(calibrate("dg-21", 10, null, null, 3.0, 2.0)).startsWith("--light-air (2 s) is shorter"));
    }

    @Test
    void concertinaHasNoBassToTime() throws DiagnosedException {
        assertEquals(
                "Anglo concertina C/G, 20 buttons has no bass side to time.",
                onlyRemark(calibrate("anglo-cg-20", 10, 5.0, null, null, null)));
    }

    @Test
    void noteMustBeOnTheInstrument() throws DiagnosedException {
        Calibration none = Calibration.of(
                InstrumentLibrary.find("dg-21"), new Timings(Pitch.parse("F4"), 10, null, null, null, null));
        assertTrue(onlyRemark(none).contains("gives F4"));
    }

    @Test
    void hardToBelieveIsDoubtedAndImpossibleRefused() throws DiagnosedException {
        assertTrue(onlyRemark(calibrate("dg-21", 100, null, null, null, null)).contains("far from 40.0"));
        assertTrue(onlyRemark(calibrate("dg-21", 600, null, null, null, null)).contains("may have"));
    }
}
