package org.bellowscribe.solver.limit;

import java.util.HashSet;
import java.util.Set;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;

/** Notes that sound together have a finger each; the same finger of the other hand is another finger. */
public final class OneFingerEach implements StepLimit {

    @Override
    public String id() {
        return "one-finger-each";
    }

    @Override
    public String summary() {
        return "Each button of a note group has a finger of its own.";
    }

    @Override
    public boolean allows(Moment moment, Choice choice) {
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < choice.fingers().size(); i++) {
            if (!taken.add(
                    choice.buttons().get(i).hand().label() + choice.fingers().get(i))) {
                return false;
            }
        }
        return true;
    }
}
