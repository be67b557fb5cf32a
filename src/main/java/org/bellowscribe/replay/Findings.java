package org.bellowscribe.replay;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;

/** Collects violations with the measures in which they happen. */
final class Findings {

    private final Tune tune;
    private final List<Violation> violations = new ArrayList<>();

    Findings(Tune tune) {
        this.tune = tune;
    }

    /** Adds a violation at an event unless the sentence is false of it. */
    void require(boolean kept, Event event, String limit, String text, Object... values) {
        if (!kept) {
            Measure measure = tune.measureOf(event);
            Place place = Place.measure(measure.index() + 1, measure.number(), tune.part());
            add(place, limit, text.formatted(values));
        }
    }

    /** Adds a violation of the whole tune. */
    void require(boolean kept, String limit, String text, Object... values) {
        if (!kept) {
            add(Place.FILE, limit, text.formatted(values));
        }
    }

    // The same step is met on every pass; one finding says it all.
    private void add(Place place, String limit, String text) {
        Violation violation = new Violation(place, limit, text);
        if (!violations.contains(violation)) {
            violations.add(violation);
        }
    }

    List<Violation> violations() {
        return List.copyOf(violations);
    }
}
