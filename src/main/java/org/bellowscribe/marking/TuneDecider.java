package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.cause.AirCauses;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;
import org.bellowscribe.theory.KeyName;

/** The second step of marking: chooses the key, solves, has the result replayed, and answers what a teacher asked. */
public final class TuneDecider {

    /** States to expand at most where it matters that a tune can be played, not that nothing costs less. */
    static final long ADVICE_CELLS = 20_000;

    private final MarkSettings settings;
    private final Playing playing;

    /** Creates a decider. */
    public TuneDecider(MarkSettings settings) {
        this.settings = settings;
        playing = new Playing(settings.played());
    }

    /**
     * Decides a tune.
     *
     * @throws DiagnosedException if what was asked cannot be answered
     */
    public Decision decide(ReadTune read) throws DiagnosedException {
        SortedMap<Integer, Fixes.Fixed> keys = new TreeMap<>();
        KeySearch search = new KeySearch(read.tune(), (tune, moved) -> play(read, tune, moved, keys));
        KeySearch.InKey inKey = inKey(search);
        List<Diagnostic> remarks = new ArrayList<>(read.remarks());
        if (inKey.outcome() instanceof Outcome.Solved solved) {
            remarks.addAll(solved.diagnostics());
            Fixes.Fixed fixed = Objects.requireNonNull(keys.get(inKey.semitones()), "what was solved was fixed before");
            return decided(read, fixed, solved.solution(), remarks);
        }
        List<Diagnostic> why = ((Outcome.Unplayable) inKey.outcome()).diagnostics();
        KeySearch elsewhere = new KeySearch(read.tune(), (tune, moved) -> lookAt(read, tune, moved));
        remarks.addAll(new Elsewhere(settings, read.tune(), moved -> isPossible(read, moved), elsewhere).advise(why));
        return new Decision.Refused(remarks);
    }

    private KeySearch.InKey inKey(KeySearch search) {
        Integer asked = settings.key().semitones();
        KeyName name = settings.key().name();
        if (name != null) {
            return search.in(name);
        }
        return asked == null ? search.nearest() : search.by(asked);
    }

    // For advice it matters that the tune can be played, not that nothing costs less.
    private Outcome lookAt(ReadTune read, Tune tune, int moved) {
        try {
            Task task = fixed(read, tune, moved).task();
            long cells = Math.min(ADVICE_CELLS, task.options().cellLimit());
            Solution found = playing.attempt(task.with(task.options().withCellLimit(cells)));
            return found == null ? new Outcome.Unplayable(List.of()) : new Outcome.Solved(found, List.of());
        } catch (DiagnosedException e) {
            return new Outcome.Unplayable(e.diagnostics());
        }
    }

    private boolean isPossible(ReadTune read, int moved) {
        if (!Transposition.isPossible(read.tune(), moved)) {
            return false;
        }
        try {
            Tune tune = Transposition.of(read.tune(), moved);
            Task task = fixed(read, tune, moved).task();
            return playing.isPossible(task.with(task.options().withCellLimit(ADVICE_CELLS)));
        } catch (DiagnosedException e) {
            return false;
        }
    }

    private Outcome play(ReadTune read, Tune tune, int moved, SortedMap<Integer, Fixes.Fixed> keys) {
        try {
            Fixes.Fixed fixed = fixed(read, tune, moved);
            keys.put(moved, fixed);
            return playing.solve(fixed.task());
        } catch (DiagnosedException e) {
            return new Outcome.Unplayable(e.diagnostics());
        }
    }

    private Fixes.Fixed fixed(ReadTune read, Tune tune, int moved) throws DiagnosedException {
        return read.fixes().in(settings.task(tune, moved, read.leftHand().wanted(tune, moved)));
    }

    // Nothing is handed on that an independent player could not play.
    private Decision decided(ReadTune read, Fixes.Fixed fixed, Solution solution, List<Diagnostic> remarks)
            throws DiagnosedException {
        List<Diagnostic> broken = playing.replay(fixed.task(), solution);
        if (!broken.isEmpty()) {
            remarks.addAll(broken);
            return new Decision.Refused(remarks);
        }
        remarks.addAll(fixed.remarks());
        Steered steered = new Answers(settings.steering(), playing).of(fixed.task(), solution);
        DecidedTune tune = new DecidedTune(
                playing.played(fixed.task()),
                fixed.task().tune(),
                read.tune(),
                settings.key().keepsNotes(),
                playing.onMelody(solution, fixed.task().tune()),
                steered,
                AirCauses.of(playing.played(fixed.task()), solution));
        return new Decision.Decided(read, tune, fixed.signed(), remarks);
    }
}
