package org.bellowscribe.solver.reason;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.model.Attempt;
import org.bellowscribe.solver.model.Choices;

/**
 * Finds the fewest pins that make a tune unplayable together: leaves out one after the other (deletion filter), and keeps
 * out those without which it still cannot be played. For k pins that takes k + 1 solves.
 */
public final class PinConflict {

    private final Task task;
    private final Whereabouts places;

    /** Begins with a task. */
    public PinConflict(Task task) {
        this.task = task;
        places = new Whereabouts(task.tune());
    }

    /** Returns an error that names the pins; empty if the tune cannot be played without them either. */
    public List<Diagnostic> diagnose() {
        if (task.options().pins().isEmpty() || !succeeds(Pins.NONE)) {
            return List.of();
        }
        List<Pin> needed = needed();
        List<Pin> ways = new ArrayList<>();
        for (Pin pin : needed) {
            if (succeeds(task.options().pins().without(pin))) {
                ways.add(pin);
            }
        }
        Event first = task.tune().events().get(needed.get(0).event());
        Measure measure = task.tune().measureOf(first);
        return List.of(Diagnostic.error(
                DiagnosticCode.PIN_CONFLICT,
                Place.measure(measure.index() + 1, measure.number(), task.tune().part()),
                text(needed),
                advice(needed, ways)));
    }

    private List<Pin> needed() {
        Pins kept = task.options().pins();
        for (Pin pin : kept.list()) {
            Pins fewer = kept.without(pin);
            if (!succeeds(fewer)) {
                kept = fewer;
            }
        }
        return kept.list();
    }

    private boolean succeeds(Pins pins) {
        return Attempt.succeeds(task.with(pins));
    }

    private String text(List<Pin> needed) {
        return needed.size() == 1
                ? "Nothing that can be played on %s agrees with the pin at %s."
                        .formatted(task.instrument().name(), name(needed.get(0)))
                : "Nothing that can be played on %s agrees with these %d pins together: %s."
                        .formatted(
                                task.instrument().name(),
                                needed.size(),
                                String.join(
                                        "; ", needed.stream().map(this::name).toList()));
    }

    private String advice(List<Pin> needed, List<Pin> ways) {
        if (ways.isEmpty()) {
            return "Maybe leave out these pins: they are not the only ones that conflict.";
        }
        if (needed.size() == 1) {
            return "Maybe leave it out: without it the tune can be played." + reach(needed.get(0));
        }
        return "Maybe leave out one of them: the tune can be played without that at %s."
                .formatted(String.join(
                        ", or that at ",
                        ways.stream().map(pin -> places.name(pin.event())).toList()));
    }

    // Where the hand can lie at all, if it is pinned where it cannot.
    private String reach(Pin pin) {
        if (pin.handOn() == null) {
            return "";
        }
        Event event = task.tune().events().get(pin.event());
        Pin free = new Pin(pin.event(), pin.direction(), pin.buttons(), pin.fingers(), null, pin.leftHand(), pin.air());
        List<Integer> places = new Choices(task.instrument())
                .of(new Moment(event, task.tune().seconds(event), false)).stream()
                        .filter(free::allows)
                        .map(Choice::handOn)
                        .distinct()
                        .sorted()
                        .toList();
        return places.isEmpty() || places.contains(pin.handOn())
                ? ""
                : " With these notes the hand can be on %s."
                        .formatted(String.join(
                                ", ", places.stream().map(Object::toString).toList()));
    }

    private String name(Pin pin) {
        return "%s (%s)".formatted(places.name(pin.event()), pin.describe());
    }
}
