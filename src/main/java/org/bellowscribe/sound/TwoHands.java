package org.bellowscribe.sound;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.lefthand.Voicing;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Plays a tune through every repeat: the notes of both hands, and the words and signatures on the way. */
final class TwoHands {

    private static final int MELODY = 88;
    private static final int BASS = 72;
    private static final int CHORD = 58;

    private final DecidedTune tune;
    private final Ticks ticks;
    private final MidiTrack words;
    private final List<String> numbers;
    private final List<List<Step>> byMeasure = new ArrayList<>();
    private final Notes right = new Notes();
    private final Notes left = new Notes();
    private Fraction time = Fraction.ZERO;
    private @Nullable Step before;
    private @Nullable TimeSignature meter;

    TwoHands(DecidedTune tune, Ticks ticks, MidiTrack words) {
        this.tune = tune;
        this.ticks = ticks;
        this.words = words;
        numbers = new Whereabouts(tune.tune()).measures();
        tune.tune().measures().forEach(measure -> byMeasure.add(new ArrayList<>()));
        tune.solution()
                .steps()
                .forEach(step -> byMeasure.get(step.event().measure()).add(step));
    }

    List<Notes.Note> right() {
        return right.all();
    }

    List<Notes.Note> left() {
        return left.all();
    }

    /** Plays the tune once. */
    void play(Fraction start) {
        time = start;
        int[] passes = new int[byMeasure.size()];
        for (List<Integer> run : tune.tune().playOrder().runs()) {
            int pass = passes[run.get(0)] + 1;
            String first = numbers.get(run.get(0));
            String last = numbers.get(run.get(run.size() - 1));
            String range = first.equals(last) ? first : first + "-" + last;
            words.marker(ticks.of(time), "%s, playing %d".formatted(range, pass));
            for (int measure : run) {
                passes[measure]++;
                meter(tune.tune().measures().get(measure));
                byMeasure.get(measure).forEach(this::play);
            }
        }
    }

    private void meter(Measure measure) {
        if (!measure.time().equals(meter)) {
            // The count-in has the time of the first measure.
            words.meter(meter == null ? 0 : ticks.of(time), measure.time());
            meter = measure.time();
        }
    }

    private void play(Step step) {
        say(step);
        melody(step);
        for (LeftHandPlay play : step.leftHand()) {
            leftHand(play);
        }
        before = step;
        time = time.plus(step.event().duration());
    }

    private void say(Step step) {
        long tick = ticks.of(time);
        BellowsDirection direction = before == null ? null : before.direction();
        if (direction != step.direction()) {
            words.text(tick, step.direction().label());
        }
        if (step.air() != AirUse.NONE) {
            words.text(tick, step.air() == AirUse.FULL ? "air" : "light air");
        }
    }

    // A melody that is not played has no buttons.
    private void melody(Step step) {
        List<Pitch> pitches =
                step.buttons().isEmpty() ? List.of() : step.event().pitches();
        Step last = before;
        boolean on = step.event().heldOver() && last != null && last.direction() == step.direction();
        for (int i = 0; i < pitches.size(); i++) {
            Notes.Note note =
                    note(pitches.get(i).midiNumber(), time, step.event().duration(), MELODY);
            if (on && last != null && last.buttons().contains(step.buttons().get(i))) {
                right.hold(note);
            } else {
                right.strike(note);
            }
        }
    }

    private void leftHand(LeftHandPlay play) {
        LeftHandSound sound = play.sound();
        if (sound == null) {
            return;
        }
        int loudness = sound.kind() == LeftHandKind.BASS ? BASS : CHORD;
        for (NoteName name : Voicing.notes(sound, 0, 0)) {
            left.strike(note(
                    name.midiNumber(),
                    time.plus(play.wanted().offset()),
                    play.wanted().duration(),
                    loudness));
        }
    }

    private Notes.Note note(int pitch, Fraction start, Fraction duration, int loudness) {
        return new Notes.Note(pitch, ticks.of(start), ticks.of(start.plus(duration)), loudness);
    }
}
