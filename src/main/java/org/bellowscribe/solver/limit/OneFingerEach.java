package org.bellowscribe.solver.limit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;

/**
 * Notes that sound together have a finger each, but for two buttons of the same number on neighboring rows: one finger
 * lies across both. The same finger of the other hand is another finger. Common practice, no source.
 */
public final class OneFingerEach implements StepLimit {

    @Override
    public String id() {
        return "one-finger-each";
    }

    @Override
    public String summary() {
        return "Each button of a note group has a finger of its own, or shares it with the one beside it on the next row.";
    }

    @Override
    public boolean allows(Moment moment, Choice choice) {
        Map<String, Button> taken = new HashMap<>();
        Set<String> across = new HashSet<>();
        for (int i = 0; i < choice.fingers().size(); i++) {
            Button button = choice.buttons().get(i);
            String finger = button.hand().label() + choice.fingers().get(i);
            Button other = taken.putIfAbsent(finger, button);
            boolean free = other == null || (!choice.grip().strapped() && button.isBeside(other) && across.add(finger));
            if (!free) {
                return false;
            }
        }
        return true;
    }
}
