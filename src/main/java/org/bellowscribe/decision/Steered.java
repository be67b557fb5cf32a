package org.bellowscribe.decision;

import java.util.List;
import org.bellowscribe.solver.explain.Alternative;
import org.bellowscribe.solver.explain.Explanation;
import org.bellowscribe.solver.explain.PinPrice;

/**
 * What a teacher fixed and asked about a tune.
 *
 * @param pins the pins with their prices; empty if nothing is fixed
 * @param explanations the events that were asked about
 * @param alternatives other ways to play the tune
 */
public record Steered(List<PinPrice> pins, List<Explanation> explanations, List<Alternative> alternatives) {

    /** Nothing was fixed or asked. */
    public static final Steered NOT = new Steered(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Steered {
        pins = List.copyOf(pins);
        explanations = List.copyOf(explanations);
        alternatives = List.copyOf(alternatives);
    }
}
