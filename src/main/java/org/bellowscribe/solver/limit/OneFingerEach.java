package org.bellowscribe.solver.limit;

import java.util.HashSet;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;

/** Notes that sound together have a finger each. */
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
        return new HashSet<>(choice.fingers()).size() == choice.fingers().size();
    }
}
