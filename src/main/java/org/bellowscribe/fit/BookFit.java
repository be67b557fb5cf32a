package org.bellowscribe.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bellowscribe.instrument.Instrument;

/** What a whole book of tunes asks of instruments. Tunes are added one by one; nothing of them is kept but counts. */
public final class BookFit {

    private final Map<String, Counts> byInstrument = new LinkedHashMap<>();
    private int tunes;

    /**
     * How an instrument serves a book.
     *
     * @param instrument the instrument
     * @param plays tunes that it plays in some key
     * @param asWritten tunes that it plays as they are written
     * @param bestFor tunes for which no other instrument ranks before it
     * @param keys the keys that sound, each tune in the best key for this instrument, with the number of tunes; the most
     *     frequent first
     */
    public record Line(Instrument instrument, int plays, int asWritten, int bestFor, Map<String, Integer> keys) {}

    private static final class Counts {
        private final Instrument instrument;
        private final Map<String, Integer> keys = new TreeMap<>();
        private int plays;
        private int asWritten;
        private int bestFor;

        Counts(Instrument instrument) {
            this.instrument = instrument;
        }

        Line line() {
            Map<String, Integer> sorted = new LinkedHashMap<>();
            keys.entrySet().stream()
                    .sorted(Map.Entry.<String, Integer>comparingByValue()
                            .reversed()
                            .thenComparing(Map.Entry.comparingByKey()))
                    .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
            return new Line(instrument, plays, asWritten, bestFor, sorted);
        }
    }

    /** Begins a book for some instruments. */
    public BookFit(List<Instrument> instruments) {
        instruments.forEach(instrument -> byInstrument.put(instrument.id(), new Counts(instrument)));
    }

    /** Adds a tune. */
    public void add(TuneFit fit) {
        Set<String> seen = new HashSet<>();
        for (Trial trial : fit.trials()) {
            Counts counts = byInstrument.get(trial.instrument().id());
            if (counts == null || trial.verdict() == Trial.Verdict.FAILS) {
                continue;
            }
            counts.asWritten += trial.semitones() == 0 ? 1 : 0;
            if (seen.add(trial.instrument().id())) {
                counts.bestFor += seen.size() == 1 ? 1 : 0;
                counts.plays++;
                counts.keys.merge(trial.soundingKey(fit.tune()).name(), 1, Integer::sum);
            }
        }
        tunes++;
    }

    /** Returns the number of tunes. */
    public int tunes() {
        return tunes;
    }

    /** Returns the instruments, those first that play the most tunes, then those that play more of them as written. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        byInstrument.values().forEach(counts -> lines.add(counts.line()));
        lines.sort(Comparator.comparingInt(Line::plays)
                .thenComparingInt(Line::asWritten)
                .thenComparingInt(Line::bestFor)
                .reversed());
        return List.copyOf(lines);
    }
}
