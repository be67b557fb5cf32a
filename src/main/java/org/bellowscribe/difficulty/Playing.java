package org.bellowscribe.difficulty;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;

/**
 * One playing of a tune at its tempo, with all repeats.
 *
 * @param notes note groups of the melody as they are struck
 * @param wanted what the left hand should strike, of what begins together one
 * @param strokes what the left hand presses
 * @param steps all steps, rests too
 */
record Playing(
        List<Played<Event>> notes,
        List<Played<WantedSound>> wanted,
        List<Played<Stroke>> strokes,
        List<Played<Step>> steps) {

    /**
     * Something that is played.
     *
     * @param <T> what
     * @param seconds time since the start
     * @param length how long it sounds, in seconds
     * @param what what is played
     */
    record Played<T>(double seconds, double length, T what) {}

    /** Returns the playing of a decided tune. */
    static Playing of(DecidedTune decided) {
        Tune tune = decided.tune();
        List<Played<Event>> notes = new ArrayList<>();
        SortedMap<Double, Played<WantedSound>> wanted = new TreeMap<>();
        List<Played<Stroke>> strokes = new ArrayList<>();
        List<Played<Step>> steps = new ArrayList<>();
        List<List<Stroke>> byEvent = new ArrayList<>();
        decided.solution().steps().forEach(step -> byEvent.add(new ArrayList<>()));
        Stroke.of(decided.solution())
                .forEach(stroke -> byEvent.get(stroke.event()).add(stroke));
        double now = 0;
        for (int event : tune.eventOrder()) {
            Step step = decided.solution().steps().get(event);
            double length = tune.seconds(step.event());
            steps.add(new Played<>(now, length, step));
            if (!step.buttons().isEmpty() && (!step.event().heldOver() || notes.isEmpty())) {
                notes.add(new Played<>(now, length, step.event()));
            }
            for (LeftHandPlay play : step.leftHand()) {
                double at = now + tune.tempo().seconds(play.wanted().offset());
                wanted.put(
                        at, new Played<>(at, tune.tempo().seconds(play.wanted().duration()), play.wanted()));
            }
            for (Stroke stroke : byEvent.get(event)) {
                double at = now + tune.tempo().seconds(stroke.offset());
                strokes.add(new Played<>(at, tune.tempo().seconds(stroke.duration()), stroke));
            }
            now += length;
        }
        return new Playing(notes, List.copyOf(wanted.values()), strokes, steps);
    }
}
