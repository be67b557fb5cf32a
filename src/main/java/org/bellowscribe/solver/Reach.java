package org.bellowscribe.solver;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.model.Choices;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;

/** Tells whether notes can be held together on an instrument. Keeps what it has found out; for one thread. */
public final class Reach {

    private final Choices choices;
    private final Map<List<Pitch>, Boolean> known = new HashMap<>();

    /** Begins with an instrument. */
    public Reach(Instrument instrument) {
        choices = new Choices(instrument);
    }

    /** Returns true if in one bellows direction all notes lie under the player's fingers. */
    public boolean holds(List<Pitch> pitches) {
        return known.computeIfAbsent(pitches, this::find);
    }

    private boolean find(List<Pitch> pitches) {
        List<Integer> notes = pitches.stream().map(pitch -> 0).toList();
        Event event = new Event(0, 0, Fraction.ZERO, Fraction.of(1, 1), pitches, notes);
        return !choices.of(new Moment(event, 1, false)).isEmpty();
    }
}
