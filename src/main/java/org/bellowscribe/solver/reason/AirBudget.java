package org.bellowscribe.solver.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Possibility;
import org.bellowscribe.solver.search.Problem;
import org.jspecify.annotations.Nullable;

/** How far the bellows can get, whatever it costs: what arithmetic alone tells of a problem that cannot be solved. */
final class AirBudget {

    private static final double THOUSANDTHS = 1000;

    private final Problem problem;

    AirBudget(Problem problem) {
        this.problem = Possibility.withoutCosts(problem);
    }

    /** Events in play order, both ends included. */
    record Stretch(int from, int to) {}

    /** Returns two places in play order between which the bellows always end, from any opening at all; null if none. */
    @Nullable
    Stretch shortestDeadEnd() {
        Stretch shortest = null;
        for (int from = 0; from < problem.order().size(); from++) {
            int to = deadEnd(from);
            if (to >= 0 && (shortest == null || to - from < shortest.to() - shortest.from())) {
                shortest = new Stretch(from, to);
            }
        }
        return shortest;
    }

    private int deadEnd(int from) {
        List<int[]> reached = List.of(new int[] {problem.lowest(), problem.highest()});
        for (int i = from; i < problem.order().size(); i++) {
            reached = advance(reached, problem.options().get(problem.order().get(i)));
            if (reached.isEmpty()) {
                return i;
            }
        }
        return -1;
    }

    // Openings as disjoint intervals, before and after an event, whatever is played.
    private List<int[]> advance(List<int[]> reached, List<Option> options) {
        List<int[]> next = new ArrayList<>();
        for (int[] interval : reached) {
            for (Option option : options) {
                for (Move move : option.moves()) {
                    int low = interval[0] + (option.sign() > 0 ? move.low() : -move.high());
                    int high = interval[1] + (option.sign() > 0 ? move.high() : -move.low());
                    low = Math.max(low, problem.lowest());
                    high = Math.min(high, problem.highest());
                    if (low <= high) {
                        next.add(new int[] {low, high});
                    }
                }
            }
        }
        next.sort((a, b) -> Integer.compare(a[0], b[0]));
        List<int[]> joined = new ArrayList<>();
        for (int[] interval : next) {
            int[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && interval[0] <= last[1] + 1) {
                last[1] = Math.max(last[1], interval[1]);
            } else {
                joined.add(interval);
            }
        }
        return joined;
    }

    /** How far a stretch moves the bellows, from closing most to opening most, in thousandths of a RU.s. */
    record Drift(long least, long most) {

        String word() {
            return least > 0 ? "opens" : "closes";
        }

        String amount() {
            return String.format(Locale.ROOT, "%.1f", (least > 0 ? least : -most) / THOUSANDTHS);
        }
    }

    /** Returns the drift over some places of the play order, the last one left out, in bellows without end. */
    Drift drift(int from, int until) {
        long least = 0;
        long most = 0;
        for (int k = from; k < until; k++) {
            int low = Integer.MAX_VALUE;
            int high = Integer.MIN_VALUE;
            for (Option option : problem.options().get(problem.order().get(k))) {
                for (Move move : option.moves()) {
                    low = Math.min(low, option.sign() > 0 ? move.low() : -move.high());
                    high = Math.max(high, option.sign() > 0 ? move.high() : -move.low());
                }
            }
            least += low;
            most += high;
        }
        return new Drift(least, most);
    }

    /** A repeat that cannot close; places in the order of play, the last one left out. */
    record OpenRepeat(int from, int until, Drift drift) {}

    /** Returns a repeat between whose ends nothing can bring the bellows back; null if there is none. */
    @Nullable
    OpenRepeat openRepeat() {
        for (int i = 1; i < problem.order().size(); i++) {
            int begin =
                    problem.order().subList(0, i).lastIndexOf(problem.order().get(i));
            Drift drift = begin < 0 ? null : drift(begin, i);
            if (drift != null && (drift.least() > 0 || drift.most() < 0)) {
                return new OpenRepeat(begin, i, drift);
            }
        }
        return null;
    }
}
