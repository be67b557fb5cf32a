package org.bellowscribe.solver.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToIntBiFunction;
import org.bellowscribe.solver.AirRule;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.MeasureRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.StepRule;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.model.Model;
import org.bellowscribe.solver.model.RuleBook;
import org.bellowscribe.solver.search.Problem;

/**
 * How often marks meet each case of each rule: the cost of marks is the sum of these counts times the manner's points. Every
 * rule is linear in its points, so the count of a case is what the rule charges where that case alone has points.
 */
public final class CaseCounts {

    // The most points a case can have, so that what a rule rounds hardly shows.
    private static final int UNIT = 1000;

    /** A rule with the points of one case alone. */
    private record Alone(RuleCase ruleCase, Points points) {}

    private final Task task;
    private final Solution solution;
    private final List<Moment> moments;
    private final List<Choice> choices = new ArrayList<>();
    private final SortedMap<RuleCase, Double> counts = new TreeMap<>();

    private CaseCounts(Task task, Solution solution) {
        this.task = task;
        this.solution = solution;
        moments = Model.moments(task.tune());
        for (Step step : solution.steps()) {
            choices.add(new Choice(
                    step.direction(),
                    step.handOn(),
                    step.buttons(),
                    step.fingers(),
                    task.instrument().grip()));
        }
    }

    /**
     * Returns the counts of marks; a case that they do not meet is not among them.
     *
     * @param task the tune
     * @param solution its marks
     */
    public static SortedMap<RuleCase, Double> of(Task task, Solution solution) {
        CaseCounts all = new CaseCounts(task, solution);
        List<Problem.Edge> edges = Model.edges(task.tune().eventOrder());
        for (Rule rule : RuleBook.rules()) {
            all.count(rule, edges);
        }
        return all.counts;
    }

    private void count(Rule rule, List<Problem.Edge> edges) {
        Map<String, Integer> all = new HashMap<>();
        List<Alone> each = new ArrayList<>();
        for (String name : rule.cases()) {
            all.put(name, UNIT);
            each.add(new Alone(new RuleCase(rule.id(), name), new Points(Map.of(name, UNIT))));
        }
        Counter counter = new Counter(new Points(all), each);
        if (rule instanceof StepRule step) {
            counter.over(moments, (moment, points) -> step.points(moment, choice(moment), points));
        } else if (rule instanceof AirRule air) {
            counter.over(
                    moments, (moment, points) -> air.points(moment, step(moment).air(), points));
        } else if (rule instanceof LeftHandRule left) {
            counter.over(moments, (moment, points) -> leftHand(left, moment, points));
        } else if (rule instanceof PairRule pair) {
            counter.over(edges, (edge, points) -> pair(pair, edge, points));
        } else if (rule instanceof MeasureRule measure) {
            counter.over(solution.unlike(), (unlike, points) -> measure.points(points));
        }
    }

    /** Counts the cases of one rule; asks for each case only where any is met. */
    private final class Counter {
        private final Points all;
        private final List<Alone> each;

        Counter(Points all, List<Alone> each) {
            this.all = all;
            this.each = each;
        }

        <T> void over(List<T> places, ToIntBiFunction<T, Points> charge) {
            for (T place : places) {
                if (charge.applyAsInt(place, all) > 0) {
                    for (Alone one : each) {
                        int points = charge.applyAsInt(place, one.points());
                        if (points > 0) {
                            counts.merge(one.ruleCase(), (double) points / UNIT, Double::sum);
                        }
                    }
                }
            }
        }
    }

    private Choice choice(Moment moment) {
        return choices.get(moment.event().index());
    }

    private Step step(Moment moment) {
        return solution.steps().get(moment.event().index());
    }

    private int leftHand(LeftHandRule rule, Moment moment, Points points) {
        int sum = 0;
        for (LeftHandPlay play : step(moment).leftHand()) {
            sum += rule.points(moment, play, play.fit(), points);
        }
        return sum;
    }

    private int pair(PairRule rule, Problem.Edge edge, Points points) {
        return rule.points(
                moments.get(edge.from()),
                choices.get(edge.from()),
                moments.get(edge.to()),
                choices.get(edge.to()),
                points);
    }
}
