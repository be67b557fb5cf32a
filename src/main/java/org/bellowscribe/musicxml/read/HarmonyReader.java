package org.bellowscribe.musicxml.read;

import java.math.BigDecimal;
import java.util.Set;
import java.util.TreeSet;
import org.audiveris.proxymusic.Bass;
import org.audiveris.proxymusic.Degree;
import org.audiveris.proxymusic.HarmonyAlter;
import org.audiveris.proxymusic.Inversion;
import org.audiveris.proxymusic.Kind;
import org.audiveris.proxymusic.KindValue;
import org.audiveris.proxymusic.Numeral;
import org.audiveris.proxymusic.Root;
import org.audiveris.proxymusic.Step;
import org.audiveris.proxymusic.StyleText;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Chord symbols. Of several chords in one harmony the first counts. */
final class HarmonyReader {

    private final WrittenHarmony written;
    private final Key key;
    private @Nullable PitchClass root;
    private @Nullable Kind kind;
    private @Nullable PitchClass bass;
    private int inversion;
    private @Nullable ChordTones tones;

    /**
     * What was read.
     *
     * @param understood false if the symbol cannot be turned into a chord
     * @param chord the chord, null for "no chord"
     */
    record Reading(boolean understood, @Nullable ChordSymbol chord) {}

    private HarmonyReader(WrittenHarmony written, Key key) {
        this.written = written;
        this.key = key;
    }

    /**
     * Reads a chord symbol.
     *
     * @param key sounding key in force, for numerals and functions
     */
    static Reading read(WrittenHarmony written, Key key) {
        return new HarmonyReader(written, key).read();
    }

    private Reading read() {
        for (Object each : written.element().getHarmonyChord()) {
            if (isRoot(each) && (root != null || kind != null)) {
                break;
            }
            take(each);
        }
        if (kind != null && kind.getValue() == KindValue.NONE) {
            return new Reading(true, null);
        }
        PitchClass base = root;
        if (base == null) {
            return new Reading(false, null);
        }
        ChordTones chord = tones();
        PitchClass lowest = bass == null ? base.plus(chord.lowest(inversion)) : bass;
        Set<PitchClass> classes = new TreeSet<>();
        chord.tones().forEach(tone -> classes.add(base.plus(tone)));
        return new Reading(true, new ChordSymbol(base, classes, lowest));
    }

    private static boolean isRoot(Object element) {
        return element instanceof Root || element instanceof Numeral || element instanceof StyleText;
    }

    private void take(Object element) {
        if (element instanceof Root each && each.getRootStep() != null) {
            root = sounding(each.getRootStep().getValue(), each.getRootAlter());
        } else if (element instanceof Numeral each) {
            root = NumeralReader.root(each, key);
        } else if (element instanceof StyleText each) {
            root = NumeralReader.root(each.getValue(), key);
        } else if (element instanceof Kind each) {
            kind = each;
        } else if (element instanceof Inversion each && each.getValue() != null) {
            inversion = each.getValue().intValue();
        } else if (element instanceof Bass each && each.getBassStep() != null) {
            bass = sounding(each.getBassStep().getValue(), each.getBassAlter());
        } else if (element instanceof Degree each) {
            tones().apply(each);
        }
    }

    private ChordTones tones() {
        ChordTones chord = tones;
        if (chord == null) {
            KindValue value = kind == null || kind.getValue() == null ? KindValue.MAJOR : kind.getValue();
            chord = new ChordTones(KindTones.of(value));
            tones = chord;
        }
        return chord;
    }

    private @Nullable PitchClass sounding(@Nullable Step step, @Nullable HarmonyAlter alter) {
        if (step == null) {
            return null;
        }
        BigDecimal semitones = alter == null || alter.getValue() == null ? BigDecimal.ZERO : alter.getValue();
        return PitchClass.of(
                PitchClass.semitoneOf(step.value().charAt(0)) + semitones.intValue() + written.transposition());
    }
}
