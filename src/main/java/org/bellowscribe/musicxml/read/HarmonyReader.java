package org.bellowscribe.musicxml.read;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
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
import org.bellowscribe.theory.ChordText;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/**
 * Chord symbols. Of several stacked chords the first counts; of stacked numerals each is a degree of the key that the
 * next one names (five over two is the five of two).
 */
final class HarmonyReader {

    private final WrittenHarmony written;
    private final Key key;
    private @Nullable PitchClass root;
    private final List<Numeral> numerals = new ArrayList<>();
    private @Nullable Kind kind;
    private final List<Degree> degrees = new ArrayList<>();
    private @Nullable PitchClass bass;
    private int inversion;

    /**
     * What was read.
     *
     * @param chord the chord, null for "no chord"
     * @param trouble what keeps the symbol from being turned into a chord, as the middle of a sentence; empty if nothing
     */
    record Reading(@Nullable ChordSymbol chord, String trouble) {

        boolean understood() {
            return trouble.isEmpty();
        }
    }

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
        boolean first = true;
        for (Object each : written.element().getHarmonyChord()) {
            if (each instanceof Numeral numeral) {
                numerals.add(numeral);
            }
            boolean begins = each instanceof Root || each instanceof Numeral || each instanceof StyleText;
            first &= !(begins && kind != null);
            if (first) {
                take(each);
            }
        }
        if (kind != null && kind.getValue() == KindValue.NONE) {
            return new Reading(null, "");
        }
        if (kind != null && kind.getValue() == null) {
            return new Reading(null, "has an empty kind");
        }
        PitchClass base = numerals.isEmpty() ? root : NumeralReader.root(numerals, key);
        return base == null ? new Reading(null, "has no root that can be read") : new Reading(chord(base), "");
    }

    private void take(Object element) {
        if (element instanceof Root each && each.getRootStep() != null) {
            root = sounding(each.getRootStep().getValue(), each.getRootAlter());
        } else if (element instanceof StyleText each) {
            root = NumeralReader.root(each.getValue(), key);
        } else if (element instanceof Kind each) {
            kind = each;
        } else if (element instanceof Inversion each && each.getValue() != null) {
            inversion = each.getValue().intValue();
        } else if (element instanceof Bass each && each.getBassStep() != null) {
            bass = sounding(each.getBassStep().getValue(), each.getBassAlter());
        } else if (element instanceof Degree each) {
            degrees.add(each);
        }
    }

    private ChordSymbol chord(PitchClass base) {
        KindValue value = kind == null || kind.getValue() == null ? KindValue.MAJOR : kind.getValue();
        ChordSymbol spelled = value == KindValue.OTHER && degrees.isEmpty() ? spelled(base) : null;
        if (spelled != null) {
            return spelled;
        }
        ChordTones tones = new ChordTones(KindTones.of(value));
        degrees.forEach(tones::apply);
        Set<PitchClass> classes = new TreeSet<>();
        tones.tones().forEach(tone -> classes.add(base.plus(tone)));
        return new ChordSymbol(base, classes, bass == null ? base.plus(tones.lowest(inversion)) : bass);
    }

    // A chord of another kind without degrees may say by its printed text what it is.
    private @Nullable ChordSymbol spelled(PitchClass base) {
        String text = kind == null || kind.getText() == null ? "" : kind.getText();
        ChordSymbol onC = text.isEmpty() ? null : ChordText.parse("C" + text);
        return onC == null ? null : onC.plus(base.semitone());
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
