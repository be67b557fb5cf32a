package org.bellowscribe.annotation;

import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/**
 * A moment of a part of ours.
 *
 * @param measure 0-based index of the measure
 * @param onset time from its start
 */
record PartMoment(int measure, Fraction onset) {

    /** Returns a moment of an event, which may go on through several measures. */
    static PartMoment of(Tune sheet, Event event, Fraction offset) {
        int measure = event.measure();
        Fraction onset = event.onset().plus(offset);
        while (measure + 1 < sheet.measures().size()
                && onset.compareTo(sheet.measures().get(measure).length()) >= 0) {
            onset = onset.minus(sheet.measures().get(measure).length());
            measure++;
        }
        return new PartMoment(measure, onset);
    }
}
