package org.bellowscribe.accompaniment;

import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * What the melody has at a moment.
 *
 * @param event the note group or rest
 * @param offset time since its start
 */
record Sounding(Event event, Fraction offset) {

    /**
     * Returns what sounds at a moment of a measure; it may have begun in an earlier one. Null if nothing does.
     *
     * @param onset time from the start of the measure
     */
    static @Nullable Sounding at(Tune tune, Measure measure, Fraction onset) {
        if (onset.compareTo(Fraction.ZERO) < 0 || onset.compareTo(measure.length()) >= 0) {
            return null;
        }
        for (int i = tune.events().size() - 1; i >= 0; i--) {
            Event event = tune.events().get(i);
            if (event.measure() > measure.index()) {
                continue;
            }
            Fraction since = sinceStart(tune, measure, event, onset);
            if (since.compareTo(Fraction.ZERO) >= 0) {
                return since.compareTo(event.duration()) < 0 ? new Sounding(event, since) : null;
            }
        }
        return null;
    }

    private static Fraction sinceStart(Tune tune, Measure measure, Event event, Fraction onset) {
        Fraction since = onset.minus(event.onset());
        for (int m = event.measure(); m < measure.index(); m++) {
            since = since.plus(tune.measures().get(m).length());
        }
        return since;
    }

    /** Returns how long it goes on. */
    Fraction left() {
        return event.duration().minus(offset);
    }
}
