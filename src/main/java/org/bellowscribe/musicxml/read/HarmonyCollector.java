package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.audiveris.proxymusic.HarmonyType;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Measure;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.ChordText;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * Collects the chord symbols: of the melody's part, else of the first part that has any, else words that can be nothing
 * but chord symbols. Of several at one moment the first counts.
 */
final class HarmonyCollector {

    /** So many bare letters for each measure are chords even if none of them is more than a letter. */
    private static final double LETTERS_A_MEASURE = 0.5;
    /** Fewer words for each measure are no harmony of a tune, even if some read like nothing but chords. */
    private static final double WORDS_A_MEASURE = 0.25;

    private final List<PartContent> parts;
    private final int melody;
    private final List<Measure> measures;
    private final List<Diagnostic> remarks;
    private final List<Harmony> found = new ArrayList<>();

    HarmonyCollector(List<PartContent> parts, int melody, List<Measure> measures, List<Diagnostic> remarks) {
        this.parts = parts;
        this.melody = melody;
        this.measures = measures;
        this.remarks = remarks;
    }

    List<Harmony> collect() throws DiagnosedException {
        read(parts.get(melody));
        for (int i = 0; found.isEmpty() && i < parts.size(); i++) {
            if (i != melody) {
                read(parts.get(i));
            }
        }
        if (found.isEmpty()) {
            readWords(parts.get(melody));
        }
        found.sort(Comparator.comparingInt(Harmony::measure).thenComparing(Harmony::onset));
        return firstOfEachMoment();
    }

    private void read(PartContent part) throws DiagnosedException {
        int count = Math.min(measures.size(), part.measures().size());
        for (int i = 0; i < count; i++) {
            for (WrittenHarmony written : part.measures().get(i).harmonies()) {
                read(written, i, part.id());
            }
        }
    }

    private void read(WrittenHarmony written, int measure, String part) throws DiagnosedException {
        OddValue bad = written.bad();
        if (bad != null) {
            throw new DiagnosedException(bad.refusal());
        }
        if (written.element().getType() == HarmonyType.ALTERNATE) {
            return;
        }
        HarmonyReader.Reading reading =
                HarmonyReader.read(written, measures.get(measure).key());
        if (reading.understood()) {
            add(measure, written.onset(), reading.chord());
        } else {
            remarks.add(Diagnostic.warning(
                    DiagnosticCode.ODD_VALUE,
                    Place.measure(measure + 1, measures.get(measure).number(), part),
                    "A chord symbol %s; it is passed over.".formatted(reading.trouble())));
        }
    }

    // A symbol at the end of a measure belongs to the next.
    private void add(int measure, Fraction onset, @Nullable ChordSymbol chord) {
        boolean behind = onset.compareTo(measures.get(measure).length()) >= 0;
        boolean moves = behind && measure + 1 < measures.size();
        found.add(moves ? new Harmony(measure + 1, Fraction.ZERO, chord) : new Harmony(measure, onset, chord));
    }

    private void readWords(PartContent part) {
        boolean unmistakable = false;
        for (int i = 0; i < part.measures().size(); i++) {
            for (WrittenWords words : part.measures().get(i).words()) {
                ChordSymbol chord = ChordText.parse(words.text());
                if (chord != null) {
                    unmistakable |= ChordText.isUnmistakable(words.text());
                    add(i, words.onset(), chord);
                }
            }
        }
        // Bare letters may name the sections of the tune, and a few words in parentheses some other way to play it.
        if (found.size() < (unmistakable ? WORDS_A_MEASURE : LETTERS_A_MEASURE) * measures.size()) {
            found.clear();
        }
        if (!found.isEmpty()) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "The score has no chord symbols; %d words that read like chords are taken for them."
                            .formatted(found.size())));
        }
    }

    private List<Harmony> firstOfEachMoment() {
        List<Harmony> kept = new ArrayList<>();
        for (Harmony each : found) {
            Harmony last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            if (last == null
                    || last.measure() != each.measure()
                    || !last.onset().equals(each.onset())) {
                kept.add(each);
            }
        }
        return kept;
    }
}
