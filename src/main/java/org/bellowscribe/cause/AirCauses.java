package org.bellowscribe.cause;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.replay.AirLeftOut;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.explain.Explanation;
import org.jspecify.annotations.Nullable;

/** Finds out why the air button is pressed where it is. */
public final class AirCauses {

    // Far less than a thousandth, in which openings are decided.
    private static final double NOTHING = 1e-6;

    private final Task task;
    private final Solution solution;
    private final List<Sounding> performance;
    private final CauseWords words;

    private AirCauses(Task task, Solution solution) {
        this.task = task;
        this.solution = solution;
        performance = Performance.of(task.tune(), task.instrument(), solution);
        words = new CauseWords(task.tune(), task.instrument().bellows());
    }

    /**
     * Returns the cause of every press, in score order. Solves again only where a press could be left out for one time
     * through, once for each.
     *
     * @param task what was solved, with its pins
     * @param solution its solution
     */
    public static List<AirCause> of(Task task, Solution solution) {
        if (solution.steps().stream().allMatch(step -> step.air() == AirUse.NONE)) {
            return List.of();
        }
        AirCauses search = new AirCauses(task, solution);
        List<AirCause> causes = new ArrayList<>();
        for (Step step : solution.steps()) {
            if (step.air() != AirUse.NONE) {
                causes.add(search.cause(step));
            }
        }
        return causes;
    }

    private AirCause cause(Step step) {
        int event = step.event().index();
        List<Sounding> times = performance.stream()
                .filter(sounding -> sounding.step() == event)
                .toList();
        double moved = times.get(0).airMoved();
        AirCause.RunsOut runsOut = runsOut(event);
        boolean repeated = times.size() > 1;
        if (runsOut != null && runsOut.playing() == 1) {
            return new AirCause(event, moved, runsOut, null, words.runsOut(runsOut));
        }
        if (repeated || solution.again()) {
            return new AirCause(event, moved, runsOut, null, words.drifts(moved, repeated, runsOut));
        }
        Explanation.Candidate instead =
                Explanation.instead(task, solution, Pin.at(event).air(AirUse.NONE));
        return new AirCause(event, moved, null, instead, words.price(instead));
    }

    private AirCause.@Nullable RunsOut runsOut(int event) {
        Bellows bellows = task.instrument().bellows();
        AirLeftOut leftOut = new AirLeftOut(performance, bellows, step -> step == event);
        double opening = performance.get(0).openingBefore();
        for (int playing = 1; playing <= playings(); playing++) {
            WithoutAir course = leftOut.follow(0, opening);
            if (course.end() != WithoutAir.End.LASTS) {
                Sounding last = performance.get(course.last());
                return new AirCause.RunsOut(course.end(), last.step(), last.pass(), playing);
            }
            opening = course.lastOpening();
        }
        return null;
    }

    // Bellows that a pick-up leaves off the start are set right before the tune is played again.
    private int playings() {
        double off = performance.get(performance.size() - 1).openingAfter()
                - performance.get(0).openingBefore();
        return solution.again() && Math.abs(off) < NOTHING ? AirCause.PLAYINGS : 1;
    }
}
