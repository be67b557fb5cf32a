package org.bellowscribe.solver.explain;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;

/** A small tune on the D/G box for tests of explanations. */
final class Lesson {

    static final Tune TUNE = TuneText.of("[G] G4 B4 A4 G4 | [D] A4 F#4 D4*2 | [G] B4 D5 B4 A4 | G4*3 r");

    private Lesson() {}

    static Task task(Pin... pins) {
        try {
            Instrument box = InstrumentLibrary.find("dg-21");
            SolverOptions options = new SolverOptions(
                    MannerLibrary.of(MannerLibrary.DEFAULT_ID),
                    Times.AGAIN,
                    true,
                    SolverOptions.USUAL_CELL_LIMIT,
                    new Pins(List.of(pins)));
            return new Task(TUNE, box, UsualPlan.of(TUNE, box), options, 0);
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e);
        }
    }

    static Solution solve(Task task) {
        return assertInstanceOf(Outcome.Solved.class, Solver.solve(task)).solution();
    }
}
