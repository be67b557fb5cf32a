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
import org.bellowscribe.theory.Fraction;

/** Collects the chord symbols: of the melody's part, or of the first part that has any. */
final class HarmonyCollector {

    private final List<PartContent> parts;
    private final int melody;
    private final List<Measure> measures;
    private final List<Diagnostic> remarks;

    HarmonyCollector(List<PartContent> parts, int melody, List<Measure> measures, List<Diagnostic> remarks) {
        this.parts = parts;
        this.melody = melody;
        this.measures = measures;
        this.remarks = remarks;
    }

    List<Harmony> collect() throws DiagnosedException {
        List<Harmony> own = collect(parts.get(melody));
        for (int i = 0; own.isEmpty() && i < parts.size(); i++) {
            own = i == melody ? own : collect(parts.get(i));
        }
        return own;
    }

    private List<Harmony> collect(PartContent part) throws DiagnosedException {
        List<Harmony> all = new ArrayList<>();
        int count = Math.min(measures.size(), part.measures().size());
        for (int i = 0; i < count; i++) {
            for (WrittenHarmony written : part.measures().get(i).harmonies()) {
                add(written, i, part.id(), all);
            }
        }
        all.sort(Comparator.comparingInt(Harmony::measure).thenComparing(Harmony::onset));
        return firstOfEachMoment(all);
    }

    private void add(WrittenHarmony written, int measure, String part, List<Harmony> all) throws DiagnosedException {
        OddValue bad = written.bad();
        if (bad != null) {
            throw new DiagnosedException(bad.refusal());
        }
        if (written.element().getType() == HarmonyType.ALTERNATE) {
            return;
        }
        HarmonyReader.Reading reading =
                HarmonyReader.read(written, measures.get(measure).key());
        if (!reading.understood()) {
            remarks.add(Diagnostic.warning(
                    DiagnosticCode.ODD_VALUE,
                    Place.measure(measure + 1, measures.get(measure).number(), part),
                    "A chord symbol has no root that can be read; it is passed over."));
            return;
        }
        boolean late = written.onset().compareTo(measures.get(measure).length()) >= 0 && measure + 1 < measures.size();
        all.add(
                late
                        ? new Harmony(measure + 1, Fraction.ZERO, reading.chord())
                        : new Harmony(measure, written.onset(), reading.chord()));
    }

    private static List<Harmony> firstOfEachMoment(List<Harmony> sorted) {
        List<Harmony> kept = new ArrayList<>();
        for (Harmony each : sorted) {
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
