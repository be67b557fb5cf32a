package org.bellowscribe.solver.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;
import org.jspecify.annotations.Nullable;

/** Says where and why the bellows cannot last. */
public final class MissingAir {

    private static final double THOUSANDTHS = 1000;

    private final Task task;
    private final Tune tune;
    private final Instrument instrument;
    private final Problem problem;
    private final boolean airButton;

    /** Begins with a task and the problem that was made of it. */
    public MissingAir(Task task, Problem problem) {
        this.task = task;
        tune = task.tune();
        instrument = task.instrument();
        this.problem = problem;
        airButton = task.options().airButton();
    }

    /** Returns false if arithmetic alone shows that the bellows cannot last. */
    boolean isPossible() {
        return shortestDeadEnd() == null && openRepeat() == null;
    }

    /** Returns one error: the shortest stretch that no bellows survive, or the repeat that cannot close. */
    public List<Diagnostic> diagnose(Answer answer) {
        Stretch stretch = shortestDeadEnd();
        if (stretch != null) {
            return List.of(deadEnd(stretch));
        }
        OpenRepeat repeat = openRepeat();
        if (repeat != null) {
            return List.of(open(repeat));
        }
        String text = answer.isProved()
                ? "The bellows of %s cannot last through the tune with its repeats.".formatted(instrument.name())
                : "No marks were found that keep the bellows of %s within their range; there may be some."
                        .formatted(instrument.name());
        return List.of(Diagnostic.error(DiagnosticCode.NO_AIR, Place.FILE, text, waysOut()));
    }

    private String[] waysOut() {
        return new WaysOut(task).sentences().toArray(String[]::new);
    }

    /** Events in play order, both ends included. */
    private record Stretch(int from, int to) {}

    // From any opening at all: two places in play order between which the bellows always end.
    private @Nullable Stretch shortestDeadEnd() {
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

    private Diagnostic deadEnd(Stretch stretch) {
        Event first = eventAt(stretch.from());
        Event last = eventAt(stretch.to());
        String text = "The bellows of %s end between %s and %s, wherever they begin and with the air button %s."
                .formatted(
                        instrument.name(),
                        measureName(first),
                        measureName(last),
                        airButton ? "pressed on every note" : "left alone");
        return Diagnostic.error(DiagnosticCode.NO_AIR, place(last), text, waysOut());
    }

    /** How far a stretch moves the bellows, from closing most to opening most, in thousandths of a RU.s. */
    private record Drift(long least, long most) {

        String word() {
            return least > 0 ? "opens" : "closes";
        }

        String amount() {
            return String.format(Locale.ROOT, "%.1f", (least > 0 ? least : -most) / THOUSANDTHS);
        }
    }

    // With the bounds of the bellows left out of account.
    private Drift drift(int from, int until) {
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

    /** Says by how much one playing of the whole tune moves the bellows at least; empty if it need not. */
    public String driftOfAll() {
        Drift drift = drift(0, problem.order().size());
        return drift.least() <= problem.margin() && drift.most() >= -problem.margin()
                ? ""
                : "one time through %s the bellows by at least %s RU·s".formatted(drift.word(), drift.amount());
    }

    /** A repeat that cannot close; places in the order of play, the last one left out. */
    private record OpenRepeat(int from, int until, Drift drift) {}

    // A jump back in play order: what lies between must be able to bring the bellows back.
    private @Nullable OpenRepeat openRepeat() {
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

    private Diagnostic open(OpenRepeat repeat) {
        Event last = eventAt(repeat.until() - 1);
        String text = "The repeat from %s to %s %s the bellows of %s by at least %s RU·s each time, whatever is played."
                .formatted(
                        measureName(eventAt(repeat.from())),
                        measureName(last),
                        repeat.drift().word(),
                        instrument.name(),
                        repeat.drift().amount());
        return Diagnostic.error(DiagnosticCode.NO_AIR, place(last), text, waysOut());
    }

    private Event eventAt(int orderIndex) {
        return tune.events().get(problem.order().get(orderIndex));
    }

    private String measureName(Event event) {
        Measure measure = tune.measureOf(event);
        return "measure " + (measure.number().isEmpty() ? String.valueOf(measure.index() + 1) : measure.number());
    }

    private Place place(Event event) {
        Measure measure = tune.measureOf(event);
        return Place.measure(measure.index() + 1, measure.number(), tune.part());
    }
}
