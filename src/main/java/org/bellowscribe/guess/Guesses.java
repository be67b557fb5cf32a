package org.bellowscribe.guess;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.model.RowOfKey;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/**
 * Which notes of a tune the rules of thumb guess right: button and direction. A player follows the order of play, knows what
 * was really played so far, and guesses each note by the first rule that speaks of it; a note counts as guessed only if
 * the guess is right every time the note is played.
 */
public final class Guesses {

    private static final List<Integer> TRIAD_MAJOR = List.of(0, 4, 7);
    private static final List<Integer> TRIAD_MINOR = List.of(0, 3, 7);
    private static final Set<Mode> WITH_MAJOR_THIRD = EnumSet.of(Mode.MAJOR, Mode.LYDIAN, Mode.MIXOLYDIAN);

    /**
     * How often a rule decided.
     *
     * @param right notes that it guessed right every time
     * @param all notes that it was asked about
     */
    public record Rate(int right, int all) {

        private Rate plus(boolean hit) {
            return new Rate(right + (hit ? 1 : 0), all + 1);
        }
    }

    private record Guess(RuleOfThumb rule, BellowsDirection direction, List<Button> buttons) {}

    private final Instrument instrument;
    private final DecidedTune tune;
    private final RowOfKey rows;
    private final Map<List<Pitch>, Step> last = new HashMap<>();
    private final SortedMap<Integer, Boolean> right = new TreeMap<>();
    private final Map<Integer, RuleOfThumb> first = new HashMap<>();

    private Guesses(DecidedTune tune) {
        this.tune = tune;
        instrument = tune.instrument();
        rows = new RowOfKey(instrument);
    }

    /** Guesses a tune through. */
    public static Guesses of(DecidedTune tune) {
        Guesses guesses = new Guesses(tune);
        Step before = null;
        for (int index : tune.tune().eventOrder()) {
            Step step = tune.solution().steps().get(index);
            if (step.buttons().isEmpty() || step.event().heldOver()) {
                continue;
            }
            guesses.guess(step, before);
            before = step;
        }
        return guesses;
    }

    /** Returns the 0-based indices of the notes that are guessed right every time. */
    public SortedSet<Integer> right() {
        SortedSet<Integer> all = new TreeSet<>();
        right.forEach((event, hit) -> {
            if (hit) {
                all.add(event);
            }
        });
        return all;
    }

    /** Returns how many of all notes are guessed right every time. */
    public Rate rate() {
        return new Rate(right().size(), right.size());
    }

    /** Returns the rate of each rule that decided, over the notes of which it spoke first. */
    public Map<RuleOfThumb, Rate> byRule() {
        Map<RuleOfThumb, Rate> rates = new EnumMap<>(RuleOfThumb.class);
        right.forEach((event, hit) -> {
            RuleOfThumb rule = first.get(event);
            if (rule != null) {
                rates.put(rule, rates.getOrDefault(rule, new Rate(0, 0)).plus(hit));
            }
        });
        return Collections.unmodifiableMap(rates);
    }

    private void guess(Step step, @Nullable Step before) {
        Guess guess = guess(step.event().pitches(), step, before);
        boolean hit = guess != null
                && guess.direction() == step.direction()
                && guess.buttons().equals(step.buttons());
        int event = step.event().index();
        right.merge(event, hit, Boolean::logicalAnd);
        if (guess != null) {
            first.putIfAbsent(event, guess.rule());
        }
        last.put(step.event().pitches(), step);
    }

    private @Nullable Guess guess(List<Pitch> pitches, Step step, @Nullable Step before) {
        Step known = last.get(pitches);
        if (known != null) {
            return new Guess(RuleOfThumb.SAME_AS_LAST, known.direction(), known.buttons());
        }
        int row = rows.of(tune.tune().measureOf(step.event()).key());
        if (isTonic(pitches, step)) {
            List<Button> pushed = at(pitches, row, BellowsDirection.PUSH, before);
            if (!pushed.isEmpty()) {
                return new Guess(RuleOfThumb.PUSH_ON_TONIC, BellowsDirection.PUSH, pushed);
            }
        }
        BellowsDirection way = before == null ? BellowsDirection.PUSH : before.direction();
        for (BellowsDirection direction : List.of(way, way.opposite())) {
            List<Button> found = at(pitches, row, direction, before);
            if (!found.isEmpty()) {
                return new Guess(RuleOfThumb.NEAREST_AT_HOME, direction, found);
            }
        }
        return null;
    }

    private boolean isTonic(List<Pitch> pitches, Step step) {
        Key key = tune.tune().measureOf(step.event()).key();
        PitchClass tonic = key.tonic();
        List<Integer> triad = WITH_MAJOR_THIRD.contains(key.mode()) ? TRIAD_MAJOR : TRIAD_MINOR;
        return pitches.stream()
                .allMatch(pitch -> triad.contains(pitch.pitchClass().above(tonic)));
    }

    // For each note the button of a row nearest to the last one; empty if the row lacks a note. Without a home row any
    // row.
    private List<Button> at(List<Pitch> pitches, int row, BellowsDirection direction, @Nullable Step before) {
        int from = before == null || before.buttons().isEmpty()
                ? 0
                : before.buttons().get(0).number();
        List<Button> found = new ArrayList<>();
        for (Pitch pitch : pitches) {
            instrument.buttons().stream()
                    .filter(button -> row == 0 || button.row() == row)
                    .filter(button -> pitch.equals(button.pitch(direction)))
                    .min(Comparator.comparingInt(button -> Math.abs(button.number() - from)))
                    .ifPresent(found::add);
        }
        return found.size() == pitches.size() ? found : List.of();
    }
}
