package org.bellowscribe.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.explain.Alternative;
import org.bellowscribe.solver.explain.Alternatives;

/** A table of the ways to play a tune, to be printed under its line. */
public final class AlternativesText {

    private static final String ROW = "    %-32s %6s %9s %6s %5s %8s %9s  %s";

    private AlternativesText() {}

    /**
     * Returns the lines.
     *
     * @param first the cheapest marks
     * @param others other ways, which may be none
     * @param names name of the file of a way, 2 for the first of the others
     */
    public static List<String> lines(Tune tune, Solution first, List<Alternative> others, IntFunction<String> names) {
        if (others.isEmpty()) {
            return List.of("  no other good way was found in which %d percent of the notes are played otherwise"
                    .formatted(Alternatives.CLEARLY));
        }
        List<String> lines = new ArrayList<>();
        lines.add(ROW.formatted("ways", "points", "reversals", "shifts", "air", "silences", "different", "made by"));
        lines.add(figures(tune, first).row("the marks", "", first.cost().isProved() ? "the least" : ""));
        for (int i = 0; i < others.size(); i++) {
            Alternative way = others.get(i);
            boolean proved = way.solution().cost().isProved();
            String made = way.made() + (proved ? "; the least with these buttons" : "");
            lines.add(figures(tune, way.solution()).row(names.apply(i + 2), way.differentPercent() + " %", made));
        }
        lines.add(
                "    Different: notes with another direction or button than in the marks. The ways were found by other"
                        + " weights");
        lines.add("    and billed with the usual ones; they are not proved to be the best.");
        return lines;
    }

    private record Figures(int points, int reversals, int shifts, long air, long silences) {
        String row(String name, String different, String made) {
            return ROW.formatted(name, points, reversals, shifts, air, silences, different, made);
        }
    }

    private static Figures figures(Tune tune, Solution solution) {
        List<Step> steps = solution.steps();
        List<Integer> order = tune.eventOrder();
        int reversals = 0;
        int shifts = 0;
        for (int i = 1; i < order.size(); i++) {
            Step before = steps.get(order.get(i - 1));
            Step after = steps.get(order.get(i));
            reversals += before.direction() == after.direction() ? 0 : 1;
            shifts += after.isMovedFrom(before) ? 1 : 0;
        }
        long air = steps.stream().filter(step -> step.air() != AirUse.NONE).count();
        long silent = steps.stream()
                .flatMap(step -> step.leftHand().stream())
                .filter(play -> play.sound() == null)
                .count();
        return new Figures(solution.cost().total(), reversals, shifts, air, silent);
    }
}
