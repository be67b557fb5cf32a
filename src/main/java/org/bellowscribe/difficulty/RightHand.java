package org.bellowscribe.difficulty;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;

/** What the hand that plays the melody has to do. */
final class RightHand {

    /** So many notes in a row are looked at together: four to eight measures of a dance. */
    private static final int IN_A_ROW = 32;

    private static final int SIXTH = 8;
    private static final int OCTAVE = 12;

    /** So long a note, in seconds, gives time to breathe. */
    private static final double BREATH = 0.75;

    private final Instrument instrument;
    private final List<Playing.Played<Step>> notes;
    private final List<Playing.Played<Step>> steps;

    RightHand(Instrument instrument, Playing playing) {
        this.instrument = instrument;
        notes = playing.notes();
        steps = playing.steps();
    }

    /** A note and what comes before it. */
    private record Pair(Step before, Step now, double gap) {

        boolean turns() {
            return before.direction() != now.direction();
        }

        boolean holds() {
            return !Collections.disjoint(before.buttons(), now.buttons());
        }

        boolean changesRow() {
            return Collections.disjoint(rows(before), rows(now));
        }

        boolean leaps() {
            return Math.abs(top(now.event()) - top(before.event())) >= SIXTH;
        }

        private static Set<Integer> rows(Step step) {
            Set<Integer> rows = new HashSet<>();
            step.buttons().forEach(button -> rows.add(button.row()));
            return rows;
        }

        private static int top(Event event) {
            return Collections.max(event.pitches()).midiNumber();
        }
    }

    Figure notes() {
        return Figure.aSecond(notes.stream().map(note -> moment(note, 1)).toList());
    }

    Figure oneWay() {
        return Figure.inARow(
                notes.stream()
                        .map(note -> moment(
                                note, note.what().event().pitches().stream().anyMatch(this::liesOneWay) ? 1 : 0))
                        .toList(),
                IN_A_ROW);
    }

    private boolean liesOneWay(Pitch pitch) {
        long ways = instrument.buttons().stream()
                .mapToInt(button -> (pitch.equals(button.push()) ? 1 : 0) + (pitch.equals(button.pull()) ? 1 : 0))
                .sum();
        return ways <= 1;
    }

    /** The row that suits the stretch best is the one by which fewest notes are off. */
    Figure offPush() {
        return instrument.buttons().stream()
                .map(Button::row)
                .distinct()
                .map(this::offPushOf)
                .min(Comparator.comparingDouble(Figure::value))
                .orElse(Figure.NONE);
    }

    private Figure offPushOf(int row) {
        List<Pitch> pushed = instrument.buttons().stream()
                .filter(button -> button.row() == row)
                .map(Button::push)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .toList();
        return Figure.inARow(
                notes.stream()
                        .map(note -> moment(
                                note, pushed.containsAll(note.what().event().pitches()) ? 0 : 1))
                        .toList(),
                IN_A_ROW);
    }

    Figure reversals() {
        return pairs(pair -> pair.turns() && !pair.holds() ? Moment.bySpeed(pair.gap) : 0);
    }

    Figure heldReversals() {
        return pairs(pair -> pair.turns() && pair.holds() ? Moment.bySpeed(pair.gap) : 0);
    }

    Figure rowChanges() {
        return pairs(pair -> pair.changesRow() ? Moment.bySpeed(pair.gap) : 0);
    }

    Figure shifts() {
        return pairs(pair -> pair.now.isMovedFrom(pair.before) ? Moment.bySpeed(pair.gap) : 0);
    }

    Figure leaps() {
        return pairs(pair -> pair.leaps() ? Moment.bySpeed(pair.gap) : 0);
    }

    private Figure pairs(ToDoubleFunction<Pair> amount) {
        List<Moment> moments = new ArrayList<>();
        for (int i = 1; i < notes.size(); i++) {
            Pair pair = new Pair(notes.get(i - 1).what(), notes.get(i).what(), gap(i));
            moments.add(moment(notes.get(i), amount.applyAsDouble(pair)));
        }
        return Figure.aSecond(moments);
    }

    /** A turn between two notes that have quick neighbors too; the slowest of the three steps counts. */
    Figure quickTurns() {
        List<Moment> moments = new ArrayList<>();
        for (int i = 2; i + 1 < notes.size(); i++) {
            if (notes.get(i - 1).what().direction() != notes.get(i).what().direction()) {
                double slowest = Math.max(gap(i), Math.max(gap(i - 1), gap(i + 1)));
                moments.add(moment(notes.get(i), Moment.bySpeed(slowest)));
            }
        }
        return Figure.aSecond(moments);
    }

    private double gap(int note) {
        return notes.get(note).seconds() - notes.get(note - 1).seconds();
    }

    Figure stretches() {
        return Figure.aSecond(
                notes.stream().map(note -> moment(note, stretches(note.what()))).toList());
    }

    private int stretches(Step step) {
        int count = 0;
        for (int i = 0; i < step.buttons().size(); i++) {
            Button button = step.buttons().get(i);
            count += instrument
                            .grip()
                            .isHome(button, step.handOn(), step.fingers().get(i))
                    ? 0
                    : 1;
        }
        return count;
    }

    Figure range() {
        List<Pitch> pitches = notes.stream()
                .flatMap(note -> note.what().event().pitches().stream())
                .sorted()
                .toList();
        if (pitches.isEmpty()) {
            return Figure.NONE;
        }
        int range =
                pitches.get(pitches.size() - 1).midiNumber() - pitches.get(0).midiNumber();
        return new Figure(Math.max(0, range - OCTAVE), -1);
    }

    Figure run() {
        Figure longest = Figure.NONE;
        int count = 0;
        int first = -1;
        for (Playing.Played<Step> step : steps) {
            boolean sounds = !step.what().buttons().isEmpty();
            first = sounds && count == 0 ? step.what().event().index() : first;
            count = sounds ? count + 1 : 0;
            longest = count > longest.value() ? new Figure(count, first) : longest;
            count = step.length() >= BREATH ? 0 : count;
        }
        return longest;
    }

    private static Moment moment(Playing.Played<Step> note, double amount) {
        return new Moment(note.seconds(), amount, note.what().event().index());
    }
}
