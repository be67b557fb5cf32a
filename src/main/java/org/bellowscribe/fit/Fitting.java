package org.bellowscribe.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.accompaniment.Accompaniment;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Reach;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
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

    /**
     * Returns the first that can be played of the trials that are the easiest at a glance; null if none of them can. What it
     * costs is not looked at.
     */
    public static @Nullable Trial easiest(Tune tune, List<Instrument> instruments, FitOptions options) {
        Fitting fitting = new Fitting(tune, options);
        List<Trial> trials = fitting.atGlance(instruments);
        return fitting.worthSolving(trials).stream()
                .map(trials::get)
                .filter(trial -> Solver.isPossible(fitting.task(trial)))
                .findFirst()
                .orElse(null);
    }

    private List<Trial> rank(List<Instrument> instruments) {
        List<Trial> trials = atGlance(instruments);
        for (int index : worthSolving(trials)) {
            trials.set(index, solve(trials.get(index)));
        }
        trials.sort(BEST_FIRST);
        return List.copyOf(trials);
    }

    // The easiest first.
    private List<Trial> atGlance(List<Instrument> instruments) {
        List<Trial> trials = new ArrayList<>();
        Glance glance = new Glance(tune);
        for (Instrument instrument : instruments) {
            Compass compass = new Compass(instrument);
            Reach reach = new Reach(instrument);
            for (int semitones : options.semitones()) {
                Diagnostic missing = missing(instrument, compass, semitones);
                Diagnostic obstacle = missing == null ? unreached(instrument, reach, semitones) : missing;
                int estimate = obstacle == null ? glance.points(compass, semitones) : 0;
                trials.add(new Trial(instrument, semitones, estimate, null, obstacle));
            }
        }
        trials.sort(BEST_FIRST);
        return trials;
    }

    /** Returns the places of the easiest trials: the best key of each instrument, then the second best, and so on. */
    private List<Integer> worthSolving(List<Trial> trials) {
        Map<String, Integer> seen = new HashMap<>();
        int[] round = new int[trials.size()];
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            if (trials.get(i).obstacle() == null) {
                round[i] = seen.merge(trials.get(i).instrument().id(), 1, Integer::sum);
                places.add(i);
            }
        }
        places.sort(Comparator.comparingInt(place -> round[place]));
        return places.subList(0, Math.min(options.solved(), places.size()));
    }

    /** Groups of notes must lie under a hand in one direction; single notes that have a button always do. */
    private @Nullable Diagnostic unreached(Instrument instrument, Reach reach, int semitones) {
        for (Event event : tune.events()) {
            if (event.pitches().size() < 2) {
                continue;
            }
            List<Pitch> pitches =
                    event.pitches().stream().map(pitch -> pitch.plus(semitones)).toList();
            if (!reach.holds(pitches)) {
                return Diagnostic.error(
                        DiagnosticCode.NO_REACH,
                        place(event),
                        "No hand reaches %s together in one bellows direction on %s."
                                .formatted(pitches, instrument.name()));
            }
        }
        return null;
    }

    private Place place(Event event) {
        return Place.measure(event.measure() + 1, tune.measureOf(event).number(), tune.part());
    }

    private @Nullable Diagnostic missing(Instrument instrument, Compass compass, int semitones) {
        for (Event event : tune.events()) {
            for (Pitch pitch : event.pitches()) {
                int midiNumber = pitch.midiNumber() + semitones;
                if (compass.places(midiNumber).isEmpty()) {
                    return Diagnostic.error(
                            DiagnosticCode.NO_BUTTON,
                            place(event),
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

    private Task task(Trial trial) {
        Tune moved = Transposition.of(tune, trial.semitones());
        SolverOptions solver = options.on(trial.instrument());
        PatternChoice patterns = PatternLibrary.usual().inManner(solver.manner().patterns());
        List<WantedSound> wanted = Accompaniment.plan(moved, trial.instrument(), patterns);
        return new Task(moved, trial.instrument(), wanted, solver, trial.semitones());
    }

    private Trial solve(Trial trial) {
        Instrument instrument = trial.instrument();
        Outcome outcome = Solver.solve(task(trial));
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
