package org.bellowscribe.solver.rule;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Grip;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/** Moments and choices for the tests of rules. */
final class Scene {

    private Scene() {}

    static Moment note(String pitch, double seconds) {
        return new Moment(event(List.of(Pitch.parse(pitch))), seconds, false);
    }

    /** Returns a note that is tied to the one before. */
    static Moment heldOver(String pitch) {
        Event struck = event(List.of(Pitch.parse(pitch)));
        Event held =
                new Event(0, 0, struck.onset(), struck.duration(), struck.pitches(), struck.noteIndices(), true, false);
        return new Moment(held, 1, false);
    }

    /** Returns the note with a place in the tune, to which a slur may lead. */
    static Moment placed(int index, boolean slurred) {
        Event event = event(List.of(Pitch.parse("D4")));
        return new Moment(
                new Event(
                        index,
                        0,
                        event.onset(),
                        event.duration(),
                        event.pitches(),
                        event.noteIndices(),
                        false,
                        slurred),
                1,
                false);
    }

    static Moment closingNote(String pitch) {
        return new Moment(event(List.of(Pitch.parse(pitch))), 1, true);
    }

    static Moment rest(double seconds) {
        return new Moment(event(List.of()), seconds, false);
    }

    /** Returns the same between two beats. */
    static Moment offBeat(Moment moment) {
        return new Moment(moment.event(), moment.seconds(), false, Moment.NO_ROW, false, moment.chordWays(), false);
    }

    private static Event event(List<Pitch> pitches) {
        return new Event(0, 0, Fraction.ZERO, Fraction.QUARTER, pitches, List.of(0));
    }

    static Choice push(int handOn, int row, int number) {
        return choice(BellowsDirection.PUSH, handOn, row, number);
    }

    static Choice pull(int handOn, int row, int number) {
        return choice(BellowsDirection.PULL, handOn, row, number);
    }

    private static Choice choice(BellowsDirection direction, int handOn, int row, int number) {
        int finger = Math.max(1, Math.min(4, number - handOn + 1));
        Button button = new Button(row, number, new Pitch(60), new Pitch(62));
        return new Choice(direction, handOn, List.of(button), List.of(finger));
    }

    /** Returns a pushed button under a hand that leans. */
    static Choice leaning(int handOn, int row, int number) {
        Choice level = choice(BellowsDirection.PUSH, handOn, row, number);
        return new Choice(level.direction(), handOn, true, level.buttons(), level.fingers(), Grip.MOVING);
    }

    /** Returns button 3 of row 2 and button 4 of row 1, pushed together. */
    static Choice overTwoRows() {
        Button inner = new Button(2, 3, new Pitch(60), new Pitch(62));
        Button outer = new Button(1, 4, new Pitch(60), new Pitch(62));
        return new Choice(BellowsDirection.PUSH, 3, List.of(inner, outer), List.of(1, 2));
    }

    static Moment noteInMeasure(int measure) {
        Event event = new Event(0, measure, Fraction.ZERO, Fraction.QUARTER, List.of(Pitch.parse("D4")), List.of(0));
        return new Moment(event, 1, false);
    }

    /** Returns a pushed button of an Anglo concertina, played with its home finger. */
    static Choice anglo(int row, int number) {
        Grip grip = new Grip(true, 5, 6);
        Button button = new Button(row, number, new Pitch(60), new Pitch(62), number <= 5 ? Hand.LEFT : Hand.RIGHT);
        int finger = grip.fingers(button, 1).get(0);
        return new Choice(BellowsDirection.PUSH, 1, List.of(button), List.of(finger), grip);
    }

    static Choice silent(BellowsDirection direction, int handOn) {
        return new Choice(direction, handOn, List.of(), List.of());
    }

    static LeftHandPlay wanted(LeftHandKind kind, boolean firstBeat, String root, int misfit) {
        ChordSymbol chord = ChordSymbol.major(PitchClass.parse(root));
        WantedSound wanted = new WantedSound(
                0, Fraction.ZERO, Fraction.of(1, 2), kind, firstBeat, List.of(new HarmonyOption(chord, misfit)));
        return new LeftHandPlay(wanted, chord, null, null);
    }

    static Points points(Object... namesAndPoints) {
        Map<String, Integer> byCase = new TreeMap<>();
        for (int i = 0; i < namesAndPoints.length; i += 2) {
            byCase.put((String) namesAndPoints[i], (Integer) namesAndPoints[i + 1]);
        }
        return new Points(byCase);
    }
}
