package org.bellowscribe.solver.reason;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.model.Choices;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Why no hand holds a note group whose notes are all on the instrument. */
final class TooWide {

    private final Choices choices;
    private final List<Pitch> pitches;

    TooWide(Choices choices, List<Pitch> pitches) {
        this.choices = choices;
        this.pitches = pitches;
    }

    /** Returns the first two notes that cannot sound together, or what fails in either direction where any two can. */
    String words() {
        List<Pitch> pair = failing(null);
        if (pair != null) {
            return "%s and %s %s".formatted(pair.get(0), pair.get(1), apart(pair));
        }
        List<String> both = new ArrayList<>();
        for (BellowsDirection direction : BellowsDirection.values()) {
            both.add("on the %s %s".formatted(direction.label(), words(direction)));
        }
        return String.join(", ", both);
    }

    private String apart(List<Pitch> pair) {
        for (BellowsDirection direction : BellowsDirection.values()) {
            if (silent(pair, direction).isEmpty()) {
                return "lie too far apart";
            }
        }
        return "sound in opposite directions";
    }

    private String words(BellowsDirection direction) {
        List<Pitch> silent = silent(pitches, direction);
        if (!silent.isEmpty()) {
            return "no button gives " + silent.get(0);
        }
        List<Pitch> pair = failing(direction);
        return pair == null
                ? "the fingers do not suffice"
                : "%s and %s lie too far apart".formatted(pair.get(0), pair.get(1));
    }

    private List<Pitch> silent(List<Pitch> among, BellowsDirection direction) {
        return among.stream()
                .filter(pitch -> choices.buttons(pitch, direction).isEmpty())
                .toList();
    }

    /** Returns the first two notes that cannot be held in a direction, or in none if it is null; null if all can. */
    private @Nullable List<Pitch> failing(@Nullable BellowsDirection direction) {
        for (int i = 0; i < pitches.size(); i++) {
            for (int j = i + 1; j < pitches.size(); j++) {
                List<Pitch> pair = List.of(pitches.get(i), pitches.get(j));
                Event event = new Event(0, 0, Fraction.ZERO, Fraction.QUARTER, pair, List.of(0, 1));
                boolean held = choices.of(new Moment(event, 1, false)).stream()
                        .anyMatch(choice -> direction == null || choice.direction() == direction);
                if (!held) {
                    return pair;
                }
            }
        }
        return null;
    }
}
