package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Grip;
import org.bellowscribe.solver.AirRule;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.OpeningRule;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.StepRule;
import org.bellowscribe.solver.Task;

/**
 * Which rules must keep their points because the marks do not speak of what they charge: those of the air button, of the left
 * hand, and all that tell one finger from another, where none of that was marked; and those of the opening always. Without this, marks of buttons alone
 * would throw the fingering away, and the air button would become free.
 */
final class HeldRules {

    private static final int FINGERS = 4;
    private static final int UNIT = 100;

    private final List<Pin> marks = new ArrayList<>();
    private final Task task;

    private HeldRules(List<TaughtTune> tunes) {
        tunes.forEach(tune -> marks.addAll(tune.marks().list()));
        task = tunes.get(0).task();
    }

    /** Returns the ids of the rules to hold; at least one tune must be given. */
    static Set<String> of(List<TaughtTune> tunes) {
        HeldRules held = new HeldRules(tunes);
        boolean air = held.marks.stream().anyMatch(pin -> pin.air() != null);
        boolean left = held.marks.stream().anyMatch(pin -> !pin.leftHand().isEmpty());
        boolean fingers = held.marks.stream().anyMatch(pin -> !pin.fingers().isEmpty() || pin.handOn() != null);
        Set<String> ids = new TreeSet<>();
        for (Rule rule : Rule.all()) {
            // The points of an opening must rise towards the ends, which the program does not know.
            boolean silent = rule instanceof OpeningRule
                    || (rule instanceof AirRule && !air)
                    || (rule instanceof LeftHandRule && !left)
                    || (!fingers && held.tellsFingers(rule));
            if (silent) {
                ids.add(rule.id());
            }
        }
        return ids;
    }

    // Asks the rule about two neighbouring buttons under all fingers and at all places of the hand.
    private boolean tellsFingers(Rule rule) {
        Map<String, Integer> each = new HashMap<>();
        rule.cases().forEach(name -> each.put(name, UNIT));
        Points points = new Points(each);
        Moment moment = task.tune().events().stream()
                .filter(event -> !event.isRest())
                .map(event -> new Moment(event, task.tune().seconds(event), false))
                .findFirst()
                .orElseThrow();
        Set<Integer> charged = new TreeSet<>();
        for (Choice first : choices(0)) {
            if (rule instanceof StepRule step) {
                charged.add(step.points(moment, first, points));
            } else if (rule instanceof PairRule pair) {
                for (Choice second : choices(1)) {
                    charged.add(pair.points(moment, first, moment, second, points));
                }
            }
        }
        return charged.size() > 1;
    }

    private List<Choice> choices(int button) {
        Grip grip = task.instrument().grip();
        Button pressed = task.instrument().buttons().get(button);
        List<Choice> choices = new ArrayList<>();
        for (int place = 1; place <= (grip.strapped() ? 1 : FINGERS); place++) {
            for (int finger = 1; finger <= FINGERS; finger++) {
                choices.add(new Choice(BellowsDirection.PUSH, place, List.of(pressed), List.of(finger), grip));
            }
        }
        return choices;
    }
}
