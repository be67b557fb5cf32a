package org.bellowscribe.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.cause.AirCauses;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Costs;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * Writes down by hand how a tune is played on a small box: one row of eight buttons (C, E, G, c, e, g, c, e on the push,
 * each with the note above it on the pull), one bass (C on the push, G on the pull), bellows of 10 RU.s of which 1 to 9
 * are used, every reed 1 RU, the bass 2 RU, loudness 5 percent, air button 3 RU lightly and 8 RU fully pressed. What is
 * said after a step belongs to that step.
 */
public final class Played {

    /** The bass button. */
    public static final LeftHandButton BASS = new LeftHandButton(
            1, 1, LeftHandSound.bass(PitchClass.parse("C")), LeftHandSound.bass(PitchClass.parse("G")));

    /** The same sounds, five buttons along. */
    public static final LeftHandButton FAR_BASS = new LeftHandButton(
            1, 6, LeftHandSound.bass(PitchClass.parse("C")), LeftHandSound.bass(PitchClass.parse("G")));

    /** The box. */
    public static final Instrument BOX = new Instrument(
            "small-box",
            "Small box",
            row("C4 D4", "E4 F4", "G4 A4", "C5 B4", "E5 D5", "G5 F5", "C6 A5", "E6 B5"),
            List.of(BASS, FAR_BASS),
            new Bellows(10, 0.1, 3, 8),
            new AirModel(440, 0, 1, 1, List.of(0), 2, 2, 2, 0.05));

    private final Tune tune;
    private final List<Step> steps = new ArrayList<>();
    private int opening;
    private boolean again = true;
    private Map<String, Integer> byRule = Map.of("bellows-reversal", 3);
    private int total = 3;
    private int lowerBound = 3;

    /**
     * Begins a tune.
     *
     * @param opening opening at the start, in thousandths of a RU.s
     */
    public Played(Tune tune, int opening) {
        this.tune = tune;
        this.opening = opening;
    }

    /** Pushes the next event for so many thousandths, with fingers as they fall and the hand on button 1. */
    public Played push(int amount, Integer... buttons) {
        return step(BellowsDirection.PUSH, -amount, buttons);
    }

    /** Pulls the next event for so many thousandths. */
    public Played pull(int amount, Integer... buttons) {
        return step(BellowsDirection.PULL, amount, buttons);
    }

    private Played step(BellowsDirection direction, int rise, Integer... numbers) {
        Event event = tune.events().get(steps.size());
        List<Button> buttons = List.of(numbers).stream().map(Played::button).toList();
        List<Integer> fingers =
                List.of(numbers).stream().map(number -> Math.min(4, number)).toList();
        steps.add(new Step(
                event, direction, buttons, fingers, 1, false, List.of(), AirUse.NONE, opening, opening + rise, 0));
        opening += rise;
        return this;
    }

    /** Opens or closes the bellows by magic. */
    public Played jumpTo(int newOpening) {
        opening = newOpening;
        return this;
    }

    /** Puts the hand on a button. */
    public Played hand(int handOn) {
        Step s = last();
        return replace(new Step(
                s.event(),
                s.direction(),
                s.buttons(),
                s.fingers(),
                handOn,
                s.held(),
                s.leftHand(),
                s.air(),
                s.openingBefore(),
                s.openingAfter(),
                s.airTaken()));
    }

    /** Gives the fingers. */
    public Played fingers(Integer... fingers) {
        Step s = last();
        return replace(new Step(
                s.event(),
                s.direction(),
                s.buttons(),
                List.of(fingers),
                s.handOn(),
                s.held(),
                s.leftHand(),
                s.air(),
                s.openingBefore(),
                s.openingAfter(),
                s.airTaken()));
    }

    /** Claims that a button is held through a reversal. */
    public Played held() {
        Step s = last();
        return replace(new Step(
                s.event(),
                s.direction(),
                s.buttons(),
                s.fingers(),
                s.handOn(),
                true,
                s.leftHand(),
                s.air(),
                s.openingBefore(),
                s.openingAfter(),
                s.airTaken()));
    }

    /** Presses the air button. */
    public Played air(AirUse air, int taken) {
        Step s = last();
        return replace(new Step(
                s.event(),
                s.direction(),
                s.buttons(),
                s.fingers(),
                s.handOn(),
                s.held(),
                s.leftHand(),
                air,
                s.openingBefore(),
                s.openingAfter(),
                taken));
    }

    /** Sounds the bass for some quarters, some quarters after the event begins. */
    public Played bass(String offset, String duration) {
        return left(offset, duration, BASS, BASS.sound(last().direction()));
    }

    /** Plays the left hand. */
    public Played left(String offset, String duration, LeftHandButton button, LeftHandSound sound) {
        Step s = last();
        ChordSymbol c = ChordSymbol.major(PitchClass.parse("C"));
        WantedSound wanted = new WantedSound(
                s.event().index(),
                Fraction.parse(offset),
                Fraction.parse(duration),
                LeftHandKind.BASS,
                true,
                List.of(new HarmonyOption(c, 0)));
        List<LeftHandPlay> plays = new ArrayList<>(s.leftHand());
        plays.add(new LeftHandPlay(wanted, c, button, sound));
        return replace(new Step(
                s.event(),
                s.direction(),
                s.buttons(),
                s.fingers(),
                s.handOn(),
                s.held(),
                plays,
                s.air(),
                s.openingBefore(),
                s.openingAfter(),
                s.airTaken()));
    }

    /** Claims only one time through. */
    public Played once() {
        again = false;
        return this;
    }

    /** Gives the bill. */
    public Played bill(Map<String, Integer> rules, int totalPoints, int least) {
        byRule = rules;
        total = totalPoints;
        lowerBound = least;
        return this;
    }

    /** Returns the solution. */
    public Solution solution() {
        return new Solution(steps, again, Costs.of(total, lowerBound, new TreeMap<>(byRule)), List.of());
    }

    /** Returns the tune as decided so. */
    public DecidedTune decided() {
        SolverOptions options = new SolverOptions(MannerLibrary.of("learner"), Times.AGAIN, true, 1);
        Task task = new Task(tune, BOX, List.of(), options, 0);
        return new DecidedTune(task, tune, tune, false, solution(), Steered.NOT, AirCauses.of(task, solution()));
    }

    /** Returns the violations as words. */
    public List<String> violations() {
        return Replay.check(tune, BOX, solution()).stream()
                .map(Violation::toString)
                .toList();
    }

    private Step last() {
        return steps.get(steps.size() - 1);
    }

    private Played replace(Step step) {
        steps.set(steps.size() - 1, step);
        return this;
    }

    private static Button button(int number) {
        return number <= BOX.buttons().size() ? BOX.buttons().get(number - 1) : new Button(1, number, null, null);
    }

    private static List<Button> row(String... pairs) {
        List<Button> buttons = new ArrayList<>();
        for (String pair : pairs) {
            String[] pitches = pair.split(" ");
            buttons.add(new Button(1, buttons.size() + 1, Pitch.parse(pitches[0]), Pitch.parse(pitches[1])));
        }
        return buttons;
    }
}
