package org.bellowscribe.solver.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import java.util.Map;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.RuleCase;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CountedMarksTest {

    // Of a rule that charges by time the parts of a point are lost at each event.
    private static final double ROUNDED = 2;

    private static final Tune TUNE = TuneText.of("[G] G4 B4 A4 G4 | [D] A4 F#4 D4*2 | [G] B4 D5 B4 A4 | G4*3 r");

    static List<String> manners() {
        return MannerLibrary.ids();
    }

    @ParameterizedTest
    @MethodSource("manners")
    void theCostIsTheSumOfTheCountsTimesThePoints(String id) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("dg-21");
        Manner manner = MannerLibrary.of(id);
        SolverOptions options = new SolverOptions(manner, Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
        CountedMarks marks = CountedMarks.of(new Task(TUNE, box, UsualPlan.of(TUNE, box), options, 0));
        assertNotNull(marks);
        double sum = 0;
        for (Map.Entry<RuleCase, Double> each : marks.counts().entrySet()) {
            RuleCase at = each.getKey();
            sum += each.getValue()
                    * manner.byRule().getOrDefault(at.rule(), Points.NONE).of(at.name());
        }
        assertEquals(marks.solution().cost().total(), sum, ROUNDED);
    }
}
