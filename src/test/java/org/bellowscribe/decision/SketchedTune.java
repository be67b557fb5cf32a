package org.bellowscribe.decision;

import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Makes a decided tune of a sketch. */
public final class SketchedTune {

    private SketchedTune() {}

    /** Returns the tune, decided as the sketch says. */
    public static DecidedTune of(Sketch sketch) {
        Arrangement sketched = sketch.arrangement();
        SolverOptions options = new SolverOptions(MannerLibrary.of("learner"), Times.AGAIN, true, 1);
        Task task = new Task(sketched.tune(), sketched.instrument(), List.of(), options, 0);
        return new DecidedTune(task, sketched.tune(), sketched.tune(), false, sketched.solution(), Steered.NOT);
    }
}
