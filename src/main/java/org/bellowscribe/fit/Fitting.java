package org.bellowscribe.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.accompaniment.Accompaniment;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/**
 * Tries a tune on instruments and in keys. Every trial is looked through for missing notes; of those that have all notes,
 * the easiest at a glance are solved. The work grows linearly with the notes, the instruments and the keys; what is
 * solved is bounded in number and in states.
 */
public final class Fitting {

    private static final Comparator<Trial> BEST_FIRST = Comparator.comparing(Trial::verdict)
            .thenComparingInt(Trial::points)
            .thenComparingInt(trial -> Math.abs(trial.semitones()))
            .thenComparingInt(trial -> -trial.semitones());

    private final Tune tune;
    private final FitOptions options;

    private Fitting(Tune tune, FitOptions options) {
        this.tune = tune;
        this.options = options;
    }

    /**
     * Returns one trial for each instrument and key, the best first: what can be played by its cost, then what has all
     * notes by the estimate, then what fails. Of equals the smaller transposition comes first, then the instrument that
     * is named first.
     */
    public static List<Trial> rank(Tune tune, List<Instrument> instruments, FitOptions options) {
        return new Fitting(tune, options).rank(instruments);
    }

    private List<Trial> rank(List<Instrument> instruments) {
        List<Trial> trials = new ArrayList<>();
        Glance glance = new Glance(tune);
        for (Instrument instrument : instruments) {
            Compass compass = new Compass(instrument);
            for (int semitones = -options.within(); semitones <= options.within(); semitones++) {
                Diagnostic missing = missing(instrument, compass, semitones);
                int estimate = missing == null ? glance.points(compass, semitones) : 0;
                trials.add(new Trial(instrument, semitones, estimate, null, missing));
            }
        }
        trials.sort(BEST_FIRST);
        for (int i = 0; i < Math.min(options.solved(), trials.size()); i++) {
            Trial trial = trials.get(i);
            trials.set(i, trial.obstacle() == null ? solve(trial) : trial);
        }
        trials.sort(BEST_FIRST);
        return List.copyOf(trials);
    }

    private @Nullable Diagnostic missing(Instrument instrument, Compass compass, int semitones) {
        for (Event event : tune.events()) {
            for (Pitch pitch : event.pitches()) {
                int midiNumber = pitch.midiNumber() + semitones;
                if (compass.places(midiNumber).isEmpty()) {
                    Measure measure = tune.measureOf(event);
                    return Diagnostic.error(
                            DiagnosticCode.NO_BUTTON,
                            Place.measure(event.measure() + 1, measure.number(), tune.part()),
                            "No button of %s gives %s.".formatted(instrument.name(), name(midiNumber)));
                }
            }
        }
        return null;
    }

    // Transposing may leave the range of pitches, and then the number has no pitch.
    private static String name(int midiNumber) {
        return PitchClass.of(midiNumber).toString() + (Math.floorDiv(midiNumber, 12) - 1);
    }

    private Trial solve(Trial trial) {
        Instrument instrument = trial.instrument();
        Tune moved = Transposition.of(tune, trial.semitones());
        Outcome outcome = Solver.solve(moved, instrument, Accompaniment.plan(moved, instrument), options.solver());
        if (outcome instanceof Outcome.Solved solved) {
            return new Trial(
                    instrument,
                    trial.semitones(),
                    trial.estimate(),
                    solved.solution().cost(),
                    null);
        }
        Diagnostic first = ((Outcome.Unplayable) outcome).diagnostics().get(0);
        return new Trial(instrument, trial.semitones(), trial.estimate(), null, first);
    }
}
