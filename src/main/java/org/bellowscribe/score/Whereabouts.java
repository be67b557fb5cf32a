package org.bellowscribe.score;

import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How people name a note of a tune: by its measure and by its place among the notes that are struck in it, from 1. Notes
 * struck together count as one; rests, grace notes and notes that are only held over from the measure before do not
 * count. Rests are counted by themselves. Measures go by their printed numbers where those tell them apart, otherwise by
 * their place in the file.
 */
public final class Whereabouts {

    private final Tune tune;
    private final List<String> numbers;

    /** Names the notes of a tune. */
    public Whereabouts(Tune tune) {
        this.tune = tune;
        List<String> printed = tune.measures().stream().map(Measure::number).toList();
        boolean clear = !printed.contains("") && new HashSet<>(printed).size() == printed.size();
        numbers = clear
                ? printed
                : tune.measures().stream()
                        .map(measure -> String.valueOf(measure.index() + 1))
                        .toList();
    }

    /** Returns the names of all measures in score order. */
    public List<String> measures() {
        return numbers;
    }

    /** Returns the measure of a name, or null if there is none. */
    public @Nullable Measure measure(String name) {
        int index = numbers.indexOf(name);
        return index < 0 ? null : tune.measures().get(index);
    }

    /** Returns the notes, one for each group, that are struck in a measure. */
    public List<Event> notes(Measure measure) {
        return in(measure, false);
    }

    /** Returns the rests that begin in a measure. */
    public List<Event> rests(Measure measure) {
        return in(measure, true);
    }

    private List<Event> in(Measure measure, boolean rests) {
        return tune.events().stream()
                .filter(event -> event.measure() == measure.index() && event.isRest() == rests && !event.heldOver())
                .toList();
    }

    /** Returns words such as {@code measure 3, note 2}, {@code measure 3, rest 1} or {@code measure 3, held note}. */
    public String name(int event) {
        Event named = tune.events().get(event);
        if (named.heldOver()) {
            return "measure %s, held note".formatted(numbers.get(named.measure()));
        }
        int place = in(tune.measureOf(named), named.isRest()).indexOf(named) + 1;
        return "measure %s, %s %d".formatted(numbers.get(named.measure()), named.isRest() ? "rest" : "note", place);
    }
}
