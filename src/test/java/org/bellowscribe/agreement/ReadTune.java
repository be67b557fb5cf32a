package org.bellowscribe.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.bellowscribe.Shared;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Times;

/**
 * A shared tune as the program plays it on the default instrument.
 *
 * @param tune the tune as written
 * @param solution how it is played
 */
record ReadTune(Tune tune, Solution solution) {

    /** Plays a tune of {@code corpus/tunes}, or skips the calling test if it is absent. */
    static ReadTune of(String name, Manner manner) {
        Tune tune = score(name);
        return new ReadTune(tune, play(tune, manner));
    }

    /** Reads a tune of {@code corpus/tunes}, or skips the calling test if it is absent. */
    static Tune score(String name) {
        try {
            String text = ScoreDocument.decode(Files.readAllBytes(Shared.path("corpus/tunes/" + name + ".musicxml")))
                    .text();
            return ScoreReader.read(text, name, ReadingOptions.DEFAULT);
        } catch (IOException | DiagnosedException e) {
            throw new IllegalStateException(name, e);
        }
    }

    /** Plays a tune on the default instrument. */
    static Solution play(Tune tune, Manner manner) {
        try {
            Instrument box = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);
            SolverOptions options = new SolverOptions(manner, Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
            if (Solver.solve(tune, box, UsualPlan.of(tune, box), options) instanceof Outcome.Solved solved) {
                return solved.solution();
            }
            throw new IllegalStateException(tune.title() + " must be playable.");
        } catch (DiagnosedException e) {
            throw new IllegalStateException(tune.title(), e);
        }
    }

    /** Returns what sounds in a measure. */
    List<Step> measure(String number) {
        return solution.steps().stream()
                .filter(step -> !step.event().isRest())
                .filter(step -> tune.measureOf(step.event()).number().equals(number))
                .toList();
    }
}
