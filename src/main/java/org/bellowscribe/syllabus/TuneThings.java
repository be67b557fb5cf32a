package org.bellowscribe.syllabus;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Measure;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;

/** Finds all that a pupil has to know for a tune. */
public final class TuneThings {

    private final DecidedTune tune;
    private final SortedSet<Thing> things = new TreeSet<>();

    private TuneThings(DecidedTune tune) {
        this.tune = tune;
    }

    /** Returns the things of a tune as it is played, each once, sorted. */
    public static SortedSet<Thing> of(DecidedTune tune) {
        TuneThings found = new TuneThings(tune);
        tune.solution().steps().forEach(found::step);
        found.turns();
        found.measures();
        found.things.addAll(Rhythms.of(tune.tune()));
        return Collections.unmodifiableSortedSet(found.things);
    }

    private void step(Step step) {
        String direction = step.direction().label();
        for (Button button : step.buttons()) {
            things.add(new Thing(Thing.Kind.BUTTON, button.row(), button.number(), direction));
        }
        step.leftHand().forEach(play -> leftHand(play, direction));
        if (step.air() != AirUse.NONE) {
            things.add(new Thing(Thing.Kind.AIR, 0, 0, step.air().label()));
        }
        if (!step.buttons().isEmpty() && !tune.instrument().grip().strapped()) {
            things.add(new Thing(Thing.Kind.HAND_PLACE, 0, step.handOn(), ""));
        }
    }

    private void leftHand(LeftHandPlay play, String direction) {
        LeftHandButton button = play.button();
        LeftHandSound sound = play.sound();
        if (button != null && sound != null) {
            Thing.Kind kind = sound.kind() == LeftHandKind.BASS ? Thing.Kind.BASS : Thing.Kind.CHORD;
            things.add(new Thing(kind, button.column(), button.number(), sound.label() + " " + direction));
        }
    }

    private void turns() {
        List<Integer> order = tune.tune().eventOrder();
        Step before = null;
        boolean rested = false;
        for (int event : order) {
            Step step = tune.solution().steps().get(event);
            if (step.buttons().isEmpty()) {
                rested = true;
                continue;
            }
            if (before != null) {
                turn(before, step, rested);
            }
            before = step;
            rested = false;
        }
    }

    private void turn(Step before, Step step, boolean rested) {
        boolean turns = before.direction() != step.direction();
        int from = row(before);
        int to = row(step);
        if (turns) {
            things.add(new Thing(Thing.Kind.REVERSAL, 0, 0, reversal(before, step, rested)));
        } else if (from != to) {
            things.add(new Thing(Thing.Kind.ROW_CHANGE, Math.min(from, to), Math.max(from, to), ""));
        }
    }

    private static String reversal(Step before, Step step, boolean rested) {
        if (rested) {
            return "in a rest";
        }
        if (step.buttons().stream().anyMatch(before.buttons()::contains)) {
            return "on one button";
        }
        return row(before) == row(step) ? "between two buttons of a row" : "with a change of row";
    }

    // Notes struck together on two rows count where the lowest lies.
    private static int row(Step step) {
        return step.buttons().get(0).row();
    }

    private void measures() {
        for (int index : tune.tune().playOrder().measures()) {
            Measure measure = tune.tune().measures().get(index);
            things.add(new Thing(Thing.Kind.TIME, 0, 0, measure.time().toString()));
            things.add(new Thing(
                    Thing.Kind.KEY, measure.key().fifths(), 0, measure.key().name()));
        }
    }
}
