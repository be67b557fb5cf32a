package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Sections;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * What a harmony costs in points: melody outside the chord, chords that are rare in the key, changes, and sections that
 * do not end at home. The figures were weighed on every second tune with chord symbols; most may be changed by half without
 * moving the share of measures that are met by more than one percent.
 */
final class HarmonyCosts {

    // A measure whose melody lies wholly outside the chord.
    private static final double OUTSIDE = 32;
    // The dominant is heard with its seventh, so that note is outside it by this much less.
    private static final double SEVENTH_INSIDE = 0.6;
    private static final int SEVENTH = 10;
    private static final double FOREIGN_THIRD = 10;
    // Tunes change their harmony at the bar line rather than within the measure.
    private static final double CHANGE_AT_BAR = 1.5;
    private static final double CHANGE_WITHIN = 4;
    // From the dominant to home in the measure in which a section ends.
    private static final double CADENCE = 1;
    // A section ends at home, and the dominant leads there.
    private static final double AWAY_AT_END = 4;
    private static final double AWAY_AT_CLOSE = 20;
    private static final double NO_DOMINANT_BEFORE_END = 1.5;
    private static final int DOMINANT = 7;

    private final Tune tune;
    private final List<HarmonySpan> spans;
    private final List<MelodyTones> tones;
    private final List<Key> keys;
    private final List<List<KeyChords.Priced>> chords = new ArrayList<>();
    private final Sections sections;
    private final int closing;

    /**
     * Weighs the harmonies of a tune.
     *
     * @param roots the roots that may be used
     */
    HarmonyCosts(Tune tune, List<HarmonySpan> spans, Set<PitchClass> roots) {
        this.tune = tune;
        this.spans = spans;
        tones = MelodyTones.of(tune, spans);
        keys = KeyEstimate.of(tune, spans, tones);
        for (HarmonySpan span : spans) {
            chords.add(KeyChords.of(keys.get(span.measure())).stream()
                    .filter(priced -> roots.contains(priced.chord().root()))
                    .toList());
        }
        List<Integer> order = tune.playOrder().measures();
        closing = order.isEmpty() ? -1 : order.get(order.size() - 1);
        sections = new Sections(tune);
    }

    /** Returns the chords that may be meant in a span. */
    List<ChordSymbol> chords(int span) {
        return chords.get(span).stream().map(KeyChords.Priced::chord).toList();
    }

    /** Returns the points of each chord of a span by the melody over it and by how usual it is in the key. */
    double[] own(int span) {
        double[] costs = new double[chords.get(span).size()];
        for (int c = 0; c < costs.length; c++) {
            KeyChords.Priced priced = chords.get(span).get(c);
            ChordSymbol chord = priced.chord();
            costs[c] = spans.get(span).share(measure(span))
                    * (OUTSIDE * outside(span, chord) + foreign(span, chord) + priced.price());
        }
        return costs;
    }

    // The part of the melody that lies outside a chord, 0 to 1.
    private double outside(int span, ChordSymbol chord) {
        MelodyTones heard = tones.get(span);
        double inside = chord.tones().stream().mapToDouble(heard::of).sum();
        if (degree(span, chord) == DOMINANT && !chord.isMinor()) {
            inside += SEVENTH_INSIDE * heard.of(chord.root().plus(SEVENTH));
        }
        return heard.sum() == 0 ? 0 : (heard.sum() - inside) / heard.sum();
    }

    // The dominant may borrow its third where its measure has not the note that is raised; any other third that is
    // not in the key sounds wrong unless the melody has it.
    private double foreign(int span, ChordSymbol chord) {
        PitchClass third = ChordTone.THIRD.of(chord);
        boolean known = KeyChords.hasInScale(keys.get(spans.get(span).measure()), third);
        boolean borrowed = degree(span, chord) == DOMINANT && !isHeardInMeasure(span, third.plus(-1));
        return known || borrowed || tones.get(span).of(third) > 0 ? 0 : FOREIGN_THIRD;
    }

    private boolean isHeardInMeasure(int span, PitchClass note) {
        int measure = spans.get(span).measure();
        return IntStream.range(0, spans.size())
                .anyMatch(each ->
                        spans.get(each).measure() == measure && tones.get(each).of(note) > 0);
    }

    private Measure measure(int span) {
        return tune.measures().get(spans.get(span).measure());
    }

    // Semitones from the tonic up to the root.
    private int degree(int span, ChordSymbol chord) {
        return chord.root().above(keys.get(spans.get(span).measure()).tonic());
    }

    /** Returns the points of each chord of a span by its place in the section. */
    double[] place(int span) {
        double[] costs = new double[chords.get(span).size()];
        int measure = spans.get(span).measure();
        boolean lastOfMeasure = span + 1 == spans.size() || spans.get(span + 1).measure() != measure;
        for (int c = 0; lastOfMeasure && c < costs.length; c++) {
            int degree = degree(span, chords.get(span).get(c).chord());
            if (sections.ends(measure)) {
                boolean fits = isClosing(measure, chords.get(span).get(c).chord(), degree);
                costs[c] = fits ? 0 : measure == closing ? AWAY_AT_CLOSE : AWAY_AT_END;
            } else if (sections.ends(measure + 1)) {
                costs[c] = degree == DOMINANT ? 0 : NO_DOMINANT_BEFORE_END;
            }
        }
        return costs;
    }

    // A section whose closing note is not in the home chord ends open, on a chord of that note.
    private boolean isClosing(int measure, ChordSymbol chord, int degree) {
        List<PitchClass> closing = new ArrayList<>();
        for (Event event : tune.events()) {
            if (event.measure() == measure && sections.closes(event)) {
                event.pitches().stream().map(Pitch::pitchClass).forEach(closing::add);
            }
        }
        List<ChordSymbol> fitting = KeyChords.of(keys.get(measure)).stream()
                .map(KeyChords.Priced::chord)
                .filter(each -> each.tones().containsAll(closing))
                .toList();
        boolean open = !fitting.isEmpty()
                && !fitting.get(0).root().equals(keys.get(measure).tonic());
        return open ? fitting.contains(chord) : degree == 0;
    }

    /** Returns the points of going from a chord of the span before to a chord of a span. */
    double change(int span, ChordSymbol from, ChordSymbol to) {
        if (from.equals(to)) {
            return 0;
        }
        return !spans.get(span).isWithin(measure(span))
                ? CHANGE_AT_BAR
                : isCadence(span, from, to) ? CADENCE : CHANGE_WITHIN;
    }

    private boolean isCadence(int span, ChordSymbol from, ChordSymbol to) {
        return sections.ends(spans.get(span).measure()) && degree(span, from) == DOMINANT && degree(span, to) == 0;
    }
}
