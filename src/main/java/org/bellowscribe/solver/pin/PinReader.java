package org.bellowscribe.solver.pin;

import java.util.List;
import java.util.Locale;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Task;

/** Makes a pin of one entry of a file. */
final class PinReader {

    private final Task task;
    private final Whereabouts places;

    PinReader(Task task) {
        this.task = task;
        places = new Whereabouts(task.tune());
    }

    Pin read(DefinitionElement entry) throws DiagnosedException {
        Event event = event(entry);
        Pin pin = Pin.at(event.index());
        String direction = entry.attribute("direction");
        if (direction != null) {
            pin = pin.direction(BellowsDirection.valueOf(direction.toUpperCase(Locale.ROOT)));
        }
        pin = new RightHandPin(task, event, entry).on(pin);
        pin = new LeftHandPin(task, event, entry).on(pin);
        String air = entry.attribute("air");
        if (air != null) {
            pin = pin.air(air(air, entry));
        }
        if (pin.equals(Pin.at(event.index()))) {
            throw BadPin.of(
                    entry,
                    "The pin at %s fixes nothing.".formatted(places.name(event.index())),
                    "Maybe add direction, button, finger, hand-on, left-hand or air.");
        }
        return pin;
    }

    private Event event(DefinitionElement entry) throws DiagnosedException {
        String name = entry.required("measure");
        Measure measure = places.measure(name);
        if (measure == null) {
            List<String> all = places.measures();
            throw BadPin.of(
                    entry,
                    "The tune has no measure %s.".formatted(name),
                    "Maybe one from %s to %s.".formatted(all.get(0), all.get(all.size() - 1)));
        }
        boolean rest = entry.attribute("rest") != null;
        if (rest == (entry.attribute("note") != null)) {
            throw BadPin.of(entry, "A pin is at a note or at a rest.", "Maybe write note=\"1\" for the first note.");
        }
        List<Event> events = rest ? places.rests(measure) : places.notes(measure);
        String what = rest ? "rest" : "note";
        int place = entry.number(what);
        if (place > events.size()) {
            throw BadPin.of(
                    entry,
                    "Measure %s has no %s %d.".formatted(name, what, place),
                    events.isEmpty()
                            ? "Maybe another measure: no %s begins in this one.".formatted(what)
                            : "Maybe one from 1 to %d: notes held over from before do not count."
                                    .formatted(events.size()));
        }
        return events.get(place - 1);
    }

    private AirUse air(String name, DefinitionElement entry) throws DiagnosedException {
        AirUse use = AirUse.valueOf(name.toUpperCase(Locale.ROOT));
        if (use != AirUse.NONE && !task.options().airButton()) {
            throw BadPin.of(
                    entry, "The air button is not used in these marks.", "Maybe add air to --marks, or drop the pin.");
        }
        return use;
    }
}
