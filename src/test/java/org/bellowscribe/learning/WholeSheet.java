package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/** All that a marked sheet shows, as pins: buttons, fingers, directions, left hand and air, what is silent or not pressed too. */
public final class WholeSheet {

    private WholeSheet() {}

    /** Returns the pins of marks. */
    public static Pins of(Solution solution) {
        List<Pin> pins = new ArrayList<>();
        solution.steps().forEach(step -> pins.add(of(step)));
        return new Pins(pins);
    }

    private static Pin of(Step step) {
        Pin pin = Pin.at(step.event().index()).air(step.air());
        boolean strikes = false;
        for (int i = 0; i < step.leftHand().size(); i++) {
            strikes |= step.leftHand().get(i).sound() != null;
            pin = pin.leftHand(i, Agreement.label(step.leftHand().get(i)));
        }
        for (int i = 0; i < step.buttons().size(); i++) {
            pin = pin.button(i, step.buttons().get(i).id())
                    .finger(i, step.fingers().get(i));
        }
        // A rest shows its direction only if something happens in it.
        boolean shows = !step.event().isRest() || strikes || step.air() != AirUse.NONE;
        return shows ? pin.direction(step.direction()) : pin;
    }
}
