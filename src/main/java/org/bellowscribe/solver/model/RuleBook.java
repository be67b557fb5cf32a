package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.AirRule;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.MeasureRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.OpeningRule;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.StepRule;

/** The rules with their points in one manner of playing. */
final class RuleBook {

    private record Priced<R extends Rule>(R rule, Points points) {}

    private final List<Priced<StepRule>> stepRules = new ArrayList<>();
    private final List<Priced<PairRule>> pairRules = new ArrayList<>();
    private final List<Priced<LeftHandRule>> leftHandRules = new ArrayList<>();
    private final List<Priced<AirRule>> airRules = new ArrayList<>();
    private final List<Priced<OpeningRule>> openingRules = new ArrayList<>();
    private final List<Priced<MeasureRule>> measureRules = new ArrayList<>();
    private final SortedMap<String, Integer> charged = new TreeMap<>();
    private final SortedMap<String, Integer> times = new TreeMap<>();
    private boolean billing;

    /** Opens the book of a manner. */
    RuleBook(Manner manner) {
        for (Rule rule : Rule.all()) {
            Points points = manner.points(rule);
            if (rule instanceof StepRule step) {
                stepRules.add(new Priced<>(step, points));
            } else if (rule instanceof PairRule pair) {
                pairRules.add(new Priced<>(pair, points));
            } else if (rule instanceof LeftHandRule leftHand) {
                leftHandRules.add(new Priced<>(leftHand, points));
            } else if (rule instanceof AirRule air) {
                airRules.add(new Priced<>(air, points));
            } else if (rule instanceof OpeningRule opening) {
                openingRules.add(new Priced<>(opening, points));
            } else if (rule instanceof MeasureRule measure) {
                measureRules.add(new Priced<>(measure, points));
            }
        }
    }

    int step(Moment moment, Choice choice) {
        int sum = 0;
        for (Priced<StepRule> priced : stepRules) {
            sum += charge(priced.rule, priced.rule.points(moment, choice, priced.points));
        }
        return sum;
    }

    int pair(Moment before, Choice from, Moment after, Choice to) {
        int sum = 0;
        for (Priced<PairRule> priced : pairRules) {
            sum += charge(priced.rule, priced.rule.points(before, from, after, to, priced.points));
        }
        return sum;
    }

    int leftHand(Moment moment, LeftHandPlay play, LeftHandFit fit) {
        int sum = 0;
        for (Priced<LeftHandRule> priced : leftHandRules) {
            sum += charge(priced.rule, priced.rule.points(moment, play, fit, priced.points));
        }
        return sum;
    }

    int air(Moment moment, AirUse air) {
        int sum = 0;
        for (Priced<AirRule> priced : airRules) {
            sum += charge(priced.rule, priced.rule.points(moment, air, priced.points));
        }
        return sum;
    }

    int opening(Moment moment, int percent) {
        int sum = 0;
        for (Priced<OpeningRule> priced : openingRules) {
            sum += charge(priced.rule, priced.rule.points(moment, percent, priced.points));
        }
        return sum;
    }

    int unlikeMeasure() {
        int sum = 0;
        for (Priced<MeasureRule> priced : measureRules) {
            sum += charge(priced.rule, priced.rule.points(priced.points));
        }
        return sum;
    }

    private int charge(Rule rule, int points) {
        if (points < 0) {
            throw new IllegalStateException(
                    "The points (%d) of rule %s must not be negative.".formatted(points, rule.id()));
        }
        if (points > 0 && billing) {
            charged.merge(rule.id(), points, Integer::sum);
            times.merge(rule.id(), 1, Integer::sum);
        }
        return points;
    }

    /** Starts a new bill. Until then nothing is written down. */
    void openBill() {
        charged.clear();
        times.clear();
        billing = true;
    }

    /** Returns what each rule has charged since the bill was opened. */
    SortedMap<String, Integer> bill() {
        return charged;
    }

    /** Returns how often each rule has charged since the bill was opened. */
    SortedMap<String, Integer> times() {
        return times;
    }
}
