package org.bellowscribe.solver;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/**
 * A soft preference: charges points, 0 or more, for what a player would rather avoid. Found through the service loader;
 * its points stand in the manner of playing, and a rule that a manner does not mention costs nothing. A rule implements
 * one of the six shapes below and keeps no state.
 */
public sealed interface Rule permits StepRule, PairRule, LeftHandRule, AirRule, OpeningRule, MeasureRule {

    /** Returns the id in kebab-case. */
    String id();

    /** Returns one sentence for people, ending with a full stop. */
    String summary();

    /** Returns the names of the cases that a manner gives points to, in the order in which to list them. */
    List<String> cases();

    /** Returns all rules on the class path, by id. */
    static List<Rule> all() {
        return ServiceLoader.load(Rule.class).stream()
                .map(ServiceLoader.Provider::get)
                .sorted(Comparator.comparing(Rule::id))
                .toList();
    }
}
