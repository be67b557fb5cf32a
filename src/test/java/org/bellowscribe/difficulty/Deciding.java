package org.bellowscribe.difficulty;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.jspecify.annotations.Nullable;

/** Decides tunes as {@code mark} does without options, and changes what they are played on or how fast. */
final class Deciding {

    private Deciding() {}

    static Instrument box(String id) {
        return InstrumentLibrary.library().of(id).instrument();
    }

    static Tune read(Path file) {
        try {
            String text = ScoreDocument.decode(Files.readAllBytes(file)).text();
            return ScoreReader.read(text, String.valueOf(file.getFileName()), ReadingOptions.DEFAULT);
        } catch (IOException | DiagnosedException e) {
            throw new IllegalStateException(file.toString(), e);
        }
    }

    static Tune sample(String name) {
        return read(Path.of("samples", "book", name + ".musicxml"));
    }

    /** Decides a tune; null if it cannot be played. */
    static @Nullable DecidedTune decide(Tune tune, Instrument box) {
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
        List<WantedSound> wanted = UsualPlan.of(tune, box);
        Task task = new Task(tune, box, wanted, options, 0);
        return Solver.solve(task) instanceof Outcome.Solved solved
                ? new DecidedTune(task, tune, tune, false, solved.solution(), Steered.NOT)
                : null;
    }

    static Tune faster(Tune tune, double factor) {
        Tempo tempo = new Tempo(tune.tempo().quartersPerMinute() * factor, true);
        return new Tune(
                tune.title(),
                tune.part(),
                tune.measures(),
                tune.events(),
                tune.harmonies(),
                tempo,
                tune.playOrder(),
                tune.diagnostics());
    }

    /** Returns the same marks at another tempo. */
    static DecidedTune faster(DecidedTune decided, double factor) {
        Tune tune = faster(decided.tune(), factor);
        return new DecidedTune(decided.task(), tune, tune, false, decided.solution(), decided.steered());
    }

    static Instrument without(Instrument box, Button removed) {
        List<Button> left = new ArrayList<>(box.buttons());
        left.remove(removed);
        return new Instrument(box.id(), box.name(), left, box.leftHand(), box.bellows(), box.air());
    }
}
