package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** What the left hand should sound in a tune, moment by moment. */
public final class Accompaniment {

    private final Tune tune;
    private final PatternChoice patterns;
    private final @Nullable HarmonyFinder finder;

    private Accompaniment(Tune tune, Instrument instrument, PatternChoice patterns) {
        this.tune = tune;
        this.patterns = patterns;
        List<Integer> order = tune.eventOrder();
        int closingMeasure = order.isEmpty()
                ? -1
                : tune.events().get(order.get(order.size() - 1)).measure();
        boolean finds = tune.harmonies().isEmpty() || tune.harmonies().stream().anyMatch(Harmony::unwritten);
        finder = finds ? new HarmonyFinder(tune, roots(instrument), closingMeasure) : null;
    }

    /**
     * Returns the wanted sounds in score order: the patterns with the chord symbols of the score, and with a
     * simple harmony wherever it has none. Empty if the instrument has no left hand.
     *
     * @param tune the tune
     * @param instrument the instrument, for what its left hand can sound at all
     * @param patterns which pattern each measure has
     */
    public static List<WantedSound> plan(Tune tune, Instrument instrument, PatternChoice patterns) {
        return instrument.leftHand().isEmpty() ? List.of() : new Accompaniment(tune, instrument, patterns).plan();
    }

    // What the left hand sounds in any direction.
    private static Set<PitchClass> roots(Instrument instrument) {
        Set<PitchClass> roots = new TreeSet<>();
        for (LeftHandButton button : instrument.leftHand()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                LeftHandSound sound = button.sound(direction);
                if (sound != null) {
                    roots.add(sound.root());
                }
            }
        }
        return roots;
    }

    private List<WantedSound> plan() {
        List<WantedSound> wanted = new ArrayList<>();
        for (Measure measure : tune.measures()) {
            if (isPickUp(measure)) {
                continue;
            }
            // A measure that is longer than its time, such as a last one with a held note, has its pattern again.
            Fraction again = measure.time().measureLength();
            for (Fraction from = Fraction.ZERO; from.compareTo(measure.length()) < 0; from = from.plus(again)) {
                addPattern(wanted, measure, from.minus(measure.beatOffset()));
            }
        }
        return wanted;
    }

    private void addPattern(List<WantedSound> wanted, Measure measure, Fraction from) {
        for (Pattern.Stroke stroke : patterns.of(measure, tune.tempo()).strokes(measure.time())) {
            Fraction onset = stroke.onset().plus(from);
            Sounding sounding = Sounding.at(tune, measure, onset);
            if (sounding != null) {
                add(wanted, measure, sounding, onset, stroke);
            }
        }
    }

    private void add(
            List<WantedSound> wanted, Measure measure, Sounding sounding, Fraction onset, Pattern.Stroke stroke) {
        List<HarmonyOption> harmonies = harmonies(measure, onset);
        if (harmonies.isEmpty()) {
            return;
        }
        Fraction duration = Fraction.min(stroke.duration(), sounding.left());
        boolean firstBeat = stroke.onset().equals(Fraction.ZERO);
        wanted.add(new WantedSound(
                sounding.event().index(),
                sounding.offset(),
                duration,
                stroke.kind(),
                stroke.tone(),
                firstBeat,
                harmonies,
                sounding.event().pitches().stream().map(Pitch::pitchClass).collect(Collectors.toSet())));
    }

    // A few notes before the bar line are played without the left hand: common practice, no source.
    private static boolean isPickUp(Measure measure) {
        Fraction half = measure.time().measureLength().times(Fraction.of(1, 2));
        return measure.beatOffset().isPositive() && measure.length().compareTo(half) <= 0;
    }

    private List<HarmonyOption> harmonies(Measure measure, Fraction onset) {
        Harmony holding = null;
        for (Harmony harmony : tune.harmonies()) {
            boolean begun = harmony.measure() < measure.index()
                    || (harmony.measure() == measure.index() && harmony.onset().compareTo(onset) <= 0);
            holding = begun ? harmony : holding;
        }
        if (finder != null && (holding == null || holding.unwritten())) {
            return finder.options(measure, onset);
        }
        return holding == null || holding.chord() == null ? List.of() : List.of(new HarmonyOption(holding.chord(), 0));
    }
}
