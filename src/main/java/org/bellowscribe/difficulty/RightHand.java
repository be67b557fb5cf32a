package org.bellowscribe.difficulty;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.bellowscribe.instrument.BellowsDirection;
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
    private final List<Playing.Played<Event>> notes;
    private final List<Playing.Played<Step>> steps;

    RightHand(Instrument instrument, Playing playing) {
        this.instrument = instrument;
        notes = playing.notes();
        steps = playing.steps();
    }

    Figure notes() {
        return Figure.aSecond(notes.stream().map(note -> moment(note, 1)).toList());
    }

    Figure oneWay() {
        return Figure.inARow(
                notes.stream()
                        .map(note -> moment(note, note.what().pitches().stream().anyMatch(this::liesOneWay) ? 1 : 0))
                        .toList(),
                IN_A_ROW);
    }

    private boolean liesOneWay(Pitch pitch) {
        long ways = instrument.buttons().stream()
                .mapToInt(button -> (pitch.equals(button.push()) ? 1 : 0) + (pitch.equals(button.pull()) ? 1 : 0))
                .sum();
        return ways <= 1;
    }

    /** Notes that lie both ways are played against the drift. */
    Figure drift() {
        Figure most = Figure.NONE;
        for (int last = 0; last < notes.size(); last++) {
            int first = Math.max(0, last - IN_A_ROW + 1);
            double pushed = 0;
            double pulled = 0;
            double free = 0;
            for (Playing.Played<Event> note : notes.subList(first, last + 1)) {
                double quarters = note.what().duration().toDouble();
                boolean push = lies(note.what(), BellowsDirection.PUSH);
                boolean pull = lies(note.what(), BellowsDirection.PULL);
                pushed += push && !pull ? quarters : 0;
                pulled += pull && !push ? quarters : 0;
                free += push == pull ? quarters : 0;
            }
            double drift = Math.abs(pushed - pulled) - free;
            most = drift > most.value()
                    ? new Figure(drift, notes.get(first).what().index())
                    : most;
        }
        return most;
    }

    private boolean lies(Event event, BellowsDirection direction) {
        return event.pitches().stream()
                .allMatch(pitch ->
                        instrument.buttons().stream().anyMatch(button -> pitch.equals(button.pitch(direction))));
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
                        .map(note -> moment(note, pushed.containsAll(note.what().pitches()) ? 0 : 1))
                        .toList(),
                IN_A_ROW);
    }

    Figure leaps() {
        List<Moment> moments = new ArrayList<>();
        for (int i = 1; i < notes.size(); i++) {
            int way = Math.abs(top(notes.get(i).what()) - top(notes.get(i - 1).what()));
            double gap = notes.get(i).seconds() - notes.get(i - 1).seconds();
            moments.add(moment(notes.get(i), way >= SIXTH ? Moment.bySpeed(gap) : 0));
        }
        return Figure.aSecond(moments);
    }

    private static int top(Event event) {
        return Collections.max(event.pitches()).midiNumber();
    }

    Figure range() {
        List<Pitch> pitches = notes.stream()
                .flatMap(note -> note.what().pitches().stream())
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

    private static Moment moment(Playing.Played<Event> note, double amount) {
        return new Moment(note.seconds(), amount, note.what().index());
    }
}
