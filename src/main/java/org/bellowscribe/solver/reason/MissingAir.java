package org.bellowscribe.solver.reason;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Problem;

/** Says where and why the bellows cannot last. */
public final class MissingAir {

    private final Task task;
    private final Tune tune;
    private final Instrument instrument;
    private final Problem problem;
    private final boolean airButton;
    private final AirBudget budget;

    /** Begins with a task and the problem that was made of it. */
    public MissingAir(Task task, Problem problem) {
        this.task = task;
        tune = task.tune();
        instrument = task.instrument();
        this.problem = problem;
        budget = new AirBudget(problem);
        airButton = task.options().airButton();
    }

    /** Returns one error: the shortest stretch that no bellows survive, or the repeat that cannot close. */
    public List<Diagnostic> diagnose(Answer answer) {
        AirBudget.Stretch stretch = budget.shortestDeadEnd();
        if (stretch != null) {
            return List.of(deadEnd(stretch));
        }
        AirBudget.OpenRepeat repeat = budget.openRepeat();
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

    private Diagnostic deadEnd(AirBudget.Stretch stretch) {
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

    /** Says by how much one playing of the whole tune moves the bellows at least; empty if it need not. */
    public String driftOfAll() {
        AirBudget.Drift drift = budget.drift(0, problem.order().size());
        return drift.least() <= problem.margin() && drift.most() >= -problem.margin()
                ? ""
                : "one time through %s the bellows by at least the air of an A4 of %s seconds"
                        .formatted(drift.word(), drift.amount());
    }

    private Diagnostic open(AirBudget.OpenRepeat repeat) {
        Event last = eventAt(repeat.until() - 1);
        String text =
                "The repeat from %s to %s %s the bellows of %s by at least the air of an A4 of %s seconds each time, whatever is played."
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
