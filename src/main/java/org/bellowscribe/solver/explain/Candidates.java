package org.bellowscribe.solver.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.model.Choices;

/** What else could be played at an event, each as the pin that asks for it and leaves everything else open. */
public final class Candidates {

    private final Task task;
    private final Step step;

    private Candidates(Task task, Step step) {
        this.task = task;
        this.step = step;
    }

    /**
     * Returns the other ways: other buttons or directions with any fingers, then other fingers on the same buttons, other
     * sounds of the left hand, other uses of the air button. What is played is not among them.
     *
     * @param task the task
     * @param step what is played at the event
     */
    public static List<Pin> of(Task task, Step step) {
        Candidates candidates = new Candidates(task, step);
        Set<Pin> all = new LinkedHashSet<>(candidates.rightHand());
        all.addAll(candidates.leftHand());
        all.addAll(candidates.air());
        return List.copyOf(all);
    }

    private Set<Pin> rightHand() {
        Moment moment = new Moment(step.event(), task.tune().seconds(step.event()), false);
        Pin played = buttons(step.direction(), step.buttons());
        Set<Pin> others = new LinkedHashSet<>();
        Set<Pin> fingers = new LinkedHashSet<>();
        for (Choice choice : new Choices(task.instrument()).of(moment)) {
            Pin pin = buttons(choice.direction(), choice.buttons());
            if (!pin.equals(played)) {
                others.add(pin);
            } else if (!choice.fingers().equals(step.fingers())) {
                fingers.add(fingers(pin, choice.fingers()));
            }
        }
        others.addAll(fingers);
        return others;
    }

    private Pin buttons(BellowsDirection direction, List<Button> buttons) {
        Pin pin = Pin.at(step.event().index()).direction(direction);
        for (int i = 0; i < buttons.size(); i++) {
            pin = pin.button(i, buttons.get(i).id());
        }
        return pin;
    }

    private static Pin fingers(Pin pin, List<Integer> fingers) {
        Pin pinned = pin;
        for (int i = 0; i < fingers.size(); i++) {
            pinned = pinned.finger(i, fingers.get(i));
        }
        return pinned;
    }

    private Set<Pin> leftHand() {
        Set<Pin> others = new LinkedHashSet<>();
        for (int stroke = 0; stroke < step.leftHand().size(); stroke++) {
            LeftHandPlay play = step.leftHand().get(stroke);
            String played = play.sound() == null ? Pin.SILENCE : play.sound().label();
            List<String> labels = labels(play.wanted());
            labels.add(Pin.SILENCE);
            for (String label : labels) {
                if (!label.equals(played)) {
                    others.add(Pin.at(step.event().index()).leftHand(stroke, label));
                }
            }
        }
        return others;
    }

    private List<String> labels(WantedSound want) {
        List<String> labels = new ArrayList<>();
        for (LeftHandButton button : task.instrument().leftHand()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                LeftHandSound sound = button.sound(direction);
                if (sound != null && fits(want, sound)) {
                    labels.add(sound.label());
                }
            }
        }
        return labels;
    }

    private static boolean fits(WantedSound want, LeftHandSound sound) {
        return want.harmonies().stream().anyMatch(harmony -> LeftHandFit.of(want, harmony.chord(), sound) != null);
    }

    private List<Pin> air() {
        List<Pin> others = new ArrayList<>();
        for (AirUse use : AirUse.values()) {
            if (use != step.air() && (task.options().airButton() || use == AirUse.NONE)) {
                others.add(Pin.at(step.event().index()).air(use));
            }
        }
        return others;
    }
}
