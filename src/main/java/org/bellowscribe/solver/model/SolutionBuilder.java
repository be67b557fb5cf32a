package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Cost;
import org.bellowscribe.solver.LeastPoints;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.UnlikePlay;
import org.bellowscribe.solver.equal.Alike;
import org.bellowscribe.solver.equal.Outlier;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.CalmOpenings;
import org.bellowscribe.solver.search.Problem;

/** Turns the search's answer back into music, and writes the bill. */
final class SolutionBuilder {

    private final Tune tune;
    private final Instrument instrument;
    private final Model model;

    SolutionBuilder(Tune tune, Instrument instrument, Model model) {
        this.tune = tune;
        this.instrument = instrument;
        this.model = model;
    }

    /** Returns the solution of an answer that was found, with the calmest openings that its marks may have at their cost. */
    Solution build(Problem problem, Alike alike, boolean again) {
        Answer answer = alike.answer();
        int[] openings = CalmOpenings.of(problem, answer, model.comfort());
        List<Choice> choices = new ArrayList<>();
        List<Action> actions = new ArrayList<>();
        for (int e = 0; e < problem.size(); e++) {
            Choice choice = model.choices.get(e).get(answer.optionAt(e));
            choices.add(choice);
            actions.add(model.actions(e, choice.direction()).get(answer.moveAt(e)));
        }
        List<Step> steps = new ArrayList<>();
        for (int e = 0; e < problem.size(); e++) {
            steps.add(step(e, choices, actions.get(e), openings));
        }
        SortedMap<String, Integer> bill =
                bill(choices, actions, openings, alike.differences().size());
        for (int e = 0; e < problem.size(); e++) {
            int points = model.apart.points(e, choices.get(e));
            if (points > 0) {
                bill.merge("apart", points, Integer::sum);
            }
        }
        int total = bill.values().stream().mapToInt(Integer::intValue).sum();
        requireAgreement(total, problem.points(answer.cost() - spared(problem, answer, openings)));
        return new Solution(
                steps,
                again,
                cost(problem, alike, total, bill),
                alike.differences().stream().map(this::unlike).toList());
    }

    private Cost cost(Problem problem, Alike alike, int total, SortedMap<String, Integer> bill) {
        Answer plain = alike.plain();
        LeastPoints apart = new LeastPoints(problem.points(plain.cost()), problem.points(plain.lowerBound()));
        return new Cost(total, problem.points(alike.answer().lowerBound()), bill, model.rules.times(), apart);
    }

    // Where the work was used up, the search may have charged the bellows more than the calmest openings need.
    private static int spared(Problem problem, Answer answer, int[] openings) {
        return problem.openingCost(answer.openingsFound()) - problem.openingCost(openings);
    }

    private static void requireAgreement(int bill, int searched) {
        if (bill != searched) {
            throw new IllegalStateException("The bill (%d) and the search (%d) must agree.".formatted(bill, searched));
        }
    }

    private UnlikePlay unlike(Outlier difference) {
        Integer dearer = difference.dearer() == Outlier.IMPOSSIBLE ? null : difference.dearer();
        return new UnlikePlay(measure(difference.measure()), measure(difference.fellow()), dearer);
    }

    private int measure(int event) {
        return tune.events().get(event).measure();
    }

    private Step step(int e, List<Choice> choices, Action action, int[] openings) {
        Choice choice = choices.get(e);
        int before = openings[2 * e];
        int after = openings[2 * e + 1];
        AirModel air = instrument.air();
        int withoutButton = Math.max((int) Math.ceil(action.nominal() * (1 - air.loudnessSlack())), (int)
                Math.floor(action.nominal() * (1 + air.loudnessSlack())));
        int airTaken = action.air() == AirUse.NONE ? 0 : Math.max(0, Math.abs(after - before) - withoutButton);
        return new Step(
                tune.events().get(e),
                choice.direction(),
                choice.buttons(),
                choice.fingers(),
                choice.handOn(),
                isHeld(e, choices),
                action.leftHand(),
                action.air(),
                before,
                after,
                airTaken);
    }

    // A button that stays down, under the same finger, while the bellows turn; true only if that is so on every pass.
    private boolean isHeld(int e, List<Choice> choices) {
        Choice choice = choices.get(e);
        boolean any = false;
        for (Problem.Edge edge : model.edges) {
            if (edge.to() == e) {
                Choice before = choices.get(edge.from());
                boolean held = before.direction() != choice.direction() && staysDown(before, choice);
                if (!held) {
                    return false;
                }
                any = true;
            }
        }
        return any;
    }

    private static boolean staysDown(Choice before, Choice after) {
        for (int i = 0; i < after.buttons().size(); i++) {
            int at = before.buttons().indexOf(after.buttons().get(i));
            if (at >= 0 && before.fingers().get(at).equals(after.fingers().get(i))) {
                return true;
            }
        }
        return false;
    }

    private SortedMap<String, Integer> bill(List<Choice> choices, List<Action> actions, int[] openings, int unlike) {
        RuleBook rules = model.rules;
        rules.openBill();
        for (int e = 0; e < choices.size(); e++) {
            Moment moment = model.moments.get(e);
            rules.step(moment, choices.get(e));
            rules.air(moment, actions.get(e).air());
            rules.opening(moment, model.scale.percent(openings[2 * e + 1]));
            for (LeftHandPlay play : actions.get(e).leftHand()) {
                rules.leftHand(moment, play, play.fit());
            }
        }
        for (Problem.Edge edge : model.edges) {
            rules.pair(
                    model.moments.get(edge.from()),
                    choices.get(edge.from()),
                    model.moments.get(edge.to()),
                    choices.get(edge.to()));
        }
        for (int i = 0; i < unlike; i++) {
            rules.unlikeMeasure();
        }
        return new TreeMap<>(rules.bill());
    }
}
