package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.replay.Replay;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/** Solves tunes as far as they are played: with a melody that is not played, its events are silent. */
final class Playing {

    private final boolean melody;

    Playing(Played played) {
        melody = played.melody();
    }

    /** Returns what is solved: the task itself, or with silence in place of the melody. */
    Task played(Task task) {
        if (melody) {
            return task;
        }
        Pins pins = new Pins(task.options().pins().list().stream()
                .map(Playing::withoutRightHand)
                .toList());
        return new Task(
                silent(task.tune()),
                task.instrument(),
                task.wanted(),
                task.options().withPins(pins),
                task.moved());
    }

    /** Solves a task. */
    Outcome solve(Task task) {
        return Solver.solve(played(task));
    }

    /** Returns true if a task can be played, whatever it costs. */
    boolean isPossible(Task task) {
        return Solver.isPossible(played(task));
    }

    /** Returns how a task is played, or null if it cannot be: does not ask why. */
    @Nullable
    Solution attempt(Task task) {
        Solution solution = Solver.attempt(played(task));
        return solution == null ? null : onMelody(solution, task.tune());
    }

    /** Returns a solution with the events of the melody, played or not. */
    Solution onMelody(Solution solution, Tune tune) {
        if (melody) {
            return solution;
        }
        List<Step> steps = new ArrayList<>();
        for (Step step : solution.steps()) {
            steps.add(step.with(tune.events().get(step.event().index())));
        }
        return new Solution(steps, solution.again(), solution.cost(), solution.unlike());
    }

    /** Returns what an independent player could not play; empty if nothing. */
    List<Diagnostic> replay(Task task, Solution solution) {
        return replay(played(task).tune(), task.instrument(), solution);
    }

    /** Returns what an independent player could not play of a tune that has nothing in it but what is played. */
    static List<Diagnostic> replay(Tune tune, Instrument instrument, Solution solution) {
        return Replay.check(tune, instrument, solution).stream()
                .map(violation -> Diagnostic.error(
                        DiagnosticCode.REPLAY,
                        violation.place(),
                        violation.text(),
                        "Please report this with the file: nothing was written."))
                .toList();
    }

    /** Returns a tune without its melody. */
    static Tune silent(Tune tune) {
        List<Event> events = tune.events().stream().map(Event::silent).toList();
        return new Tune(
                tune.title(),
                tune.part(),
                tune.measures(),
                events,
                tune.harmonies(),
                tune.tempo(),
                tune.playOrder(),
                tune.diagnostics());
    }

    private static Pin withoutRightHand(Pin pin) {
        SortedMap<Integer, String> buttons = new TreeMap<>();
        SortedMap<Integer, Integer> fingers = new TreeMap<>();
        return new Pin(pin.event(), pin.direction(), buttons, fingers, null, pin.leftHand(), pin.air());
    }
}
