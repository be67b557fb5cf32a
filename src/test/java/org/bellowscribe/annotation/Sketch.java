package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.PlayOrder;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Costs;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * Writes down how an invented tune is played, one quarter after the other. What is said after an event belongs to that
 * event. Every event has as many {@code <note>} elements as pitches, a rest one.
 */
public final class Sketch {

    private static final Key C_MAJOR = new Key(0, Mode.MAJOR);
    private static final TimeSignature TWO_TWO = new TimeSignature(2, 2);

    private final int rows;
    private final List<Draft> drafts = new ArrayList<>();
    private final Set<Integer> measureStarts = new TreeSet<>(Set.of(0));
    private List<Integer> order = List.of();
    private int notes;
    private boolean pickUp;

    /** Begins a tune for an instrument with so many rows, bellows of 12 RU.s. */
    public Sketch(int rows) {
        this.rows = rows;
    }

    /** Adds a pushed note group, by ids of buttons such as {@code 1.5}. */
    public Sketch push(String... buttons) {
        return add(BellowsDirection.PUSH, buttons);
    }

    /** Adds a pulled note group. */
    public Sketch pull(String... buttons) {
        return add(BellowsDirection.PULL, buttons);
    }

    /** Adds a rest. */
    public Sketch rest(BellowsDirection direction) {
        return add(direction);
    }

    /** Begins a measure. */
    public Sketch measure() {
        measureStarts.add(drafts.size());
        return this;
    }

    /** Makes the first measure a pick-up. */
    public Sketch pickUp() {
        pickUp = true;
        return this;
    }

    /** Says in which order the measures sound, counted from 1; else each once. */
    public Sketch order(Integer... measures) {
        order = Arrays.stream(measures).map(measure -> measure - 1).toList();
        return this;
    }

    /** Presses the air button at the last event. */
    public Sketch air(AirUse air) {
        last().air = air;
        return this;
    }

    /** Holds the buttons of the last event through a reversal. */
    public Sketch held() {
        last().held = true;
        return this;
    }

    /** Puts the hand on a button at the last event; else it is on button 3. */
    public Sketch hand(int button) {
        last().handOn = button;
        return this;
    }

    /** Gives the fingers of the last event. */
    public Sketch fingers(Integer... fingers) {
        last().fingers = List.of(fingers);
        return this;
    }

    /** Opens the bellows so far before the last event, in thousandths of a RU.s. */
    public Sketch open(int opening) {
        last().opening = opening;
        return this;
    }

    /** Takes the {@code <note>} of the last event, a rest, out of the file. */
    public Sketch unwritten() {
        last().noteIndices = List.of();
        notes--;
        return this;
    }

    /** Sounds a bass when the last event begins. */
    public Sketch bass(String root) {
        return left(Fraction.ZERO, LeftHandSound.bass(PitchClass.parse(root)));
    }

    /** Sounds a chord when the last event begins. */
    public Sketch chord(String root, Third third) {
        return left(Fraction.ZERO, LeftHandSound.chord(PitchClass.parse(root), third));
    }

    /** Sounds the left hand some quarters after the last event begins. */
    public Sketch left(Fraction offset, LeftHandSound sound) {
        LeftHandButton button = new LeftHandButton(1, 1, sound, sound);
        ChordSymbol harmony = ChordSymbol.major(sound.root());
        last().leftHand.add(new LeftHandPlay(wanted(offset, harmony), harmony, button, sound));
        return this;
    }

    /** Says which harmony the last sound of the left hand is meant for; else it is the major chord on its root. */
    public Sketch meaning(ChordSymbol harmony) {
        List<LeftHandPlay> plays = last().leftHand;
        LeftHandPlay play = plays.remove(plays.size() - 1);
        plays.add(new LeftHandPlay(wanted(play.wanted().offset(), harmony), harmony, play.button(), play.sound()));
        return this;
    }

    /** Leaves the left hand silent at the last event although a bass is wanted. */
    public Sketch silent() {
        ChordSymbol harmony = ChordSymbol.major(PitchClass.parse("C"));
        last().leftHand.add(new LeftHandPlay(wanted(Fraction.ZERO, harmony), harmony, null, null));
        return this;
    }

    /** Returns the arrangement in the default style. */
    public Arrangement arrangement() {
        return arrangement(style(StyleLibrary.DEFAULT_ID));
    }

    /** Returns the arrangement. */
    public Arrangement arrangement(Style style) {
        Bellows bellows = new Bellows(12, 0, 7, 20);
        AirModel air = new AirModel(440, 1, 0.25, 4, List.of(0), 6, 4, 3, 0);
        List<Button> buttons = new ArrayList<>();
        for (int row = 1; row <= rows; row++) {
            buttons.add(button(row + ".1"));
        }
        Instrument instrument = new Instrument("test", "Test", buttons, List.of(), bellows, air);
        return new Arrangement(
                tune(), instrument, new Solution(steps(), true, Costs.of(0, 0, new TreeMap<>()), List.of()), style);
    }

    /** Returns a style of the library. */
    public static Style style(String id) {
        try {
            return StyleLibrary.find(id);
        } catch (DiagnosedException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private Tune tune() {
        List<Measure> measures = measureStarts.stream()
                .map(start -> new Measure(0, "", Fraction.of(4, 1), beatOffset(start), TWO_TWO, C_MAJOR))
                .toList();
        List<Integer> all = new ArrayList<>();
        for (int measure = 0; measure < measures.size(); measure++) {
            all.add(measure);
        }
        List<Event> events = steps().stream().map(Step::event).toList();
        Tempo tempo = new Tempo(120, true);
        PlayOrder playOrder = new PlayOrder(order.isEmpty() ? all : order);
        return new Tune("Test", "P1", measures, events, List.of(), tempo, playOrder, List.of());
    }

    private Fraction beatOffset(int start) {
        return pickUp && start == 0 ? Fraction.of(3, 1) : Fraction.ZERO;
    }

    private List<Step> steps() {
        return drafts.stream().map(Draft::step).toList();
    }

    private Sketch add(BellowsDirection direction, String... ids) {
        int start = Collections.max(measureStarts);
        Draft draft =
                new Draft(direction, Arrays.stream(ids).map(Sketch::button).toList());
        draft.index = drafts.size();
        draft.measure = measureStarts.size() - 1;
        draft.onset = Fraction.of(drafts.size() - start, 1);
        draft.noteIndices =
                IntStream.range(notes, notes + Math.max(1, ids.length)).boxed().toList();
        notes += Math.max(1, ids.length);
        drafts.add(draft);
        return this;
    }

    private WantedSound wanted(Fraction offset, ChordSymbol harmony) {
        List<HarmonyOption> harmonies = List.of(new HarmonyOption(harmony, 0));
        return new WantedSound(drafts.size() - 1, offset, Fraction.QUARTER, LeftHandKind.BASS, true, harmonies);
    }

    private Draft last() {
        return drafts.get(drafts.size() - 1);
    }

    private static Button button(String id) {
        int dot = id.indexOf('.');
        return new Button(Integer.parseInt(id.substring(0, dot)), Integer.parseInt(id.substring(dot + 1)), null, null);
    }

    /** A step that is still being written down. */
    private static final class Draft {

        private final BellowsDirection direction;
        private final List<Button> buttons;
        private final List<LeftHandPlay> leftHand = new ArrayList<>();
        private int index;
        private int measure;
        private Fraction onset = Fraction.ZERO;
        private List<Integer> noteIndices = List.of();
        private List<Integer> fingers;
        private int handOn = 3;
        private boolean held;
        private AirUse air = AirUse.NONE;
        private int opening;

        Draft(BellowsDirection direction, List<Button> buttons) {
            this.direction = direction;
            this.buttons = buttons;
            this.fingers = buttons.stream().map(button -> 1).toList();
        }

        Step step() {
            List<Pitch> pitches = buttons.stream().map(button -> new Pitch(60)).toList();
            Event event = new Event(index, measure, onset, Fraction.QUARTER, pitches, noteIndices);
            return new Step(event, direction, buttons, fingers, handOn, held, leftHand, air, opening, opening, 0);
        }
    }
}
