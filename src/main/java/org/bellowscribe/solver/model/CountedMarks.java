package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import org.bellowscribe.solver.AirRule;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.MeasureRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.OpeningRule;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.RuleCase;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.StepRule;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.equal.Alike;
import org.bellowscribe.solver.search.Problem;
import org.jspecify.annotations.Nullable;

/**
 * Marks with how often they meet each case of each rule. Their cost is the sum of these counts times the manner's points, but
 * for what a rule rounds: every rule is linear in its points, so the count of a case is what the rule charges where that
 * case alone has points.
 */
public final class CountedMarks {

    // The most points a case can have, so that what a rule rounds hardly shows.
    private static final int UNIT = 1000;

    /** A rule with the points of one case alone. */
    private record Alone(RuleCase ruleCase, Points points) {}

    private final Model model;
    private final Solution solution;
    private final List<Choice> choices = new ArrayList<>();
    private final SortedMap<RuleCase, Double> counts = new TreeMap<>();

    private CountedMarks(Model model, Alike alike, Solution solution) {
        this.model = model;
        this.solution = solution;
        for (int e = 0; e < solution.steps().size(); e++) {
            choices.add(model.choices.get(e).get(alike.answer().optionAt(e)));
        }
        Rule.all().forEach(this::count);
    }

    /** Returns the marks of a task whose notes are all on the instrument; null if there are none. */
    public static @Nullable CountedMarks of(Task task) {
        Model model = new Model(task.tune(), task.instrument(), task.wanted(), task.options());
        if (model.firstBlocked() >= 0) {
            return null;
        }
        Attempt attempt = Attempt.of(task, model);
        if (!attempt.isFound()) {
            return null;
        }
        Alike alike = attempt.alike(task);
        SolutionBuilder builder = new SolutionBuilder(task.tune(), task.instrument(), model);
        return new CountedMarks(model, alike, builder.build(attempt.problem(), alike, attempt.again()));
    }

    /** Returns the marks. */
    public Solution solution() {
        return solution;
    }

    /** Returns the counts; a case that the marks do not meet is not among them. */
    public SortedMap<RuleCase, Double> counts() {
        return Collections.unmodifiableSortedMap(counts);
    }

    // Asks for each case only where any is met.
    private void count(Rule rule) {
        Map<String, Integer> all = new HashMap<>();
        List<Alone> each = new ArrayList<>();
        for (String name : rule.cases()) {
            all.put(name, UNIT);
            each.add(new Alone(new RuleCase(rule.id(), name), new Points(Map.of(name, UNIT))));
        }
        for (ToIntFunction<Points> place : charges(rule)) {
            if (place.applyAsInt(new Points(all)) > 0) {
                for (Alone one : each) {
                    int points = place.applyAsInt(one.points());
                    if (points > 0) {
                        counts.merge(one.ruleCase(), (double) points / UNIT, Double::sum);
                    }
                }
            }
        }
    }

    // What a rule charges at each place at which it is asked.
    private List<ToIntFunction<Points>> charges(Rule rule) {
        List<ToIntFunction<Points>> charges = new ArrayList<>();
        if (rule instanceof PairRule pair) {
            for (Problem.Edge edge : model.edges) {
                charges.add(points -> pair(pair, edge, points));
            }
        } else if (rule instanceof MeasureRule measure) {
            solution.unlike().forEach(unlike -> charges.add(measure::points));
        } else {
            for (Moment moment : model.moments) {
                charges.add(points -> at(rule, moment, points));
            }
        }
        return charges;
    }

    private int pair(PairRule rule, Problem.Edge edge, Points points) {
        return rule.points(
                model.moments.get(edge.from()),
                choices.get(edge.from()),
                model.moments.get(edge.to()),
                choices.get(edge.to()),
                points);
    }

    private int at(Rule rule, Moment moment, Points points) {
        Step step = solution.steps().get(moment.event().index());
        if (rule instanceof StepRule right) {
            return right.points(moment, choices.get(moment.event().index()), points);
        } else if (rule instanceof AirRule air) {
            return air.points(moment, step.air(), points);
        } else if (rule instanceof OpeningRule opening) {
            return opening.points(moment, model.scale.percent(step.openingAfter()), points);
        }
        int sum = 0;
        for (LeftHandPlay play : step.leftHand()) {
            sum += ((LeftHandRule) rule).points(moment, play, play.fit(), points);
        }
        return sum;
    }
}
