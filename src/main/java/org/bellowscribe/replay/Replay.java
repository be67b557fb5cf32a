package org.bellowscribe.replay;

import java.util.List;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/**
 * Plays a solution through every repeat and ending, as a player would, and reports every limit that it breaks. Knows the
 * limits from the instrument and the sheet alone, never from the search.
 */
public final class Replay {

    private Replay() {}

    /**
     * Checks a solution.
     *
     * @return what is broken: first step by step in score order, then along the order of play; empty if nothing is
     */
    public static List<Violation> check(Tune tune, Instrument instrument, Solution solution) {
        Findings findings = new Findings(tune);
        List<Event> solved = solution.steps().stream().map(Step::event).toList();
        findings.require(
                solved.equals(tune.events()),
                "one-step-each",
                "The %d steps are not those of the %d events of the tune.",
                solved.size(),
                tune.events().size());
        if (!findings.violations().isEmpty()) {
            return findings.violations();
        }
        RightHandCheck rightHand = new RightHandCheck(instrument, findings);
        LeftHandCheck leftHand = new LeftHandCheck(instrument, findings);
        AirCheck air = new AirCheck(tune, instrument, findings);
        for (Step step : solution.steps()) {
            rightHand.check(step);
            leftHand.check(step);
            air.check(step);
        }
        new BellowsCheck(tune, instrument, solution, findings).check();
        checkBill(solution, findings);
        return findings.violations();
    }

    private static void checkBill(Solution solution, Findings findings) {
        int sum = solution.cost().byRule().values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        findings.require(
                sum == solution.cost().total(),
                "bill",
                "The points of the rules add up to %d, not to %d.",
                sum,
                solution.cost().total());
        findings.require(
                solution.cost().lowerBound() <= solution.cost().total(),
                "bill",
                "The marks cost %d points, less than the proved least %d.",
                solution.cost().total(),
                solution.cost().lowerBound());
    }
}
