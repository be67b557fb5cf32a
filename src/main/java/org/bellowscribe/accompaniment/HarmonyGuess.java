package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * A simple harmony for a measure without chord symbols: the triads of the key that the left hand can sound, each with a
 * misfit that grows with the melody time that lies outside it. The solver picks one together with the buttons.
 */
final class HarmonyGuess {

    // Points of a chord that fits nothing; a silent first beat costs 20, so a half fit is better than silence.
    private static final int WORST_MISFIT = 12;
    private static final double ROOT_WEIGHT = 3;
    private static final double OTHER_WEIGHT = 2;
    private static final double TONIC_BONUS = 1.2;

    private final Tune tune;
    private final Set<PitchClass> sounding;

    HarmonyGuess(Tune tune, Instrument instrument) {
        this.tune = tune;
        sounding = new TreeSet<>();
        for (LeftHandButton button : instrument.leftHand()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                LeftHandSound sound = button.sound(direction);
                if (sound != null) {
                    sounding.add(sound.root());
                }
            }
        }
    }

    /** Returns the harmonies that may be meant in a measure, best first; empty if the left hand has none of the key. */
    List<HarmonyOption> options(Measure measure, boolean closing) {
        List<ChordSymbol> chords = diatonic(measure.key());
        chords.removeIf(chord -> !sounding.contains(chord.root()));
        List<Event> events = tune.events().stream()
                .filter(event -> event.measure() == measure.index() && !event.isRest())
                .toList();
        ChordSymbol tonic = diatonic(measure.key()).get(0);
        if (closing && chords.contains(tonic)) {
            return List.of(new HarmonyOption(tonic, 0));
        }
        double best = chords.stream()
                .mapToDouble(chord -> fit(chord, events, tonic))
                .max()
                .orElse(0);
        double full = ROOT_WEIGHT
                * events.stream()
                        .mapToDouble(event -> event.duration().toDouble())
                        .sum();
        List<HarmonyOption> options = new ArrayList<>();
        for (ChordSymbol chord : chords) {
            double share = full == 0 ? 0 : (best - fit(chord, events, tonic)) / full;
            options.add(new HarmonyOption(chord, (int) Math.round(WORST_MISFIT * share)));
        }
        options.sort(Comparator.comparingInt(HarmonyOption::misfit));
        return options;
    }

    private static double fit(ChordSymbol chord, List<Event> events, ChordSymbol tonic) {
        double sum = 0;
        for (Event event : events) {
            Fraction duration = event.duration();
            for (Pitch pitch : event.pitches()) {
                PitchClass tone = pitch.pitchClass();
                double weight =
                        tone.equals(chord.root()) ? ROOT_WEIGHT : chord.tones().contains(tone) ? OTHER_WEIGHT : 0;
                sum += weight * duration.toDouble() / event.pitches().size();
            }
        }
        return chord.equals(tonic) ? sum * TONIC_BONUS : sum;
    }

    // The triads of the scale but the diminished one, the tonic first.
    private static List<ChordSymbol> diatonic(Key key) {
        PitchClass major = new Key(key.fifths(), Mode.MAJOR).tonic();
        List<ChordSymbol> chords = new ArrayList<>();
        for (int step : new int[] {0, 5, 7}) {
            chords.add(ChordSymbol.major(major.plus(step)));
        }
        for (int step : new int[] {2, 4, 9}) {
            chords.add(ChordSymbol.minor(major.plus(step)));
        }
        chords.sort(Comparator.comparing(chord -> chord.root().above(key.tonic())));
        return chords;
    }
}
