package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/**
 * Writes small tunes for tests: measures are parted by {@code |}, notes are {@code D4} (a quarter), {@code D4*1/2},
 * {@code D4+F#4*2} for a group, {@code r*1} for a rest; {@code [G]} or {@code [Em]} sets a chord symbol,
 * {@code [?]} says that none is written from its measure on.
 */
public final class TuneText {

    private final TimeSignature time;
    private final Key key;
    private final double quartersPerMinute;
    private final List<Measure> measures = new ArrayList<>();
    private final List<Event> events = new ArrayList<>();
    private final List<Harmony> harmonies = new ArrayList<>();

    private TuneText(TimeSignature time, Key key, double quartersPerMinute) {
        this.time = time;
        this.key = key;
        this.quartersPerMinute = quartersPerMinute;
    }

    /** Returns a tune in 4/4 in D at 120 quarters a minute, played straight through. */
    public static Tune of(String text) {
        return of(text, 120);
    }

    /** Returns a tune in 4/4 in D, played straight through. */
    public static Tune of(String text, double quartersPerMinute) {
        return of(text, quartersPerMinute, null);
    }

    /**
     * Returns a tune in 4/4 in D.
     *
     * @param order 0-based measures in play order, or null for straight through
     */
    public static Tune of(String text, double quartersPerMinute, @Nullable List<Integer> order) {
        return new TuneText(new TimeSignature(4, 4), new Key(2, Mode.MAJOR), quartersPerMinute).read(text, order);
    }

    /** Returns a tune in another metre and key, played straight through. */
    public static Tune of(String text, double quartersPerMinute, TimeSignature time, Key key) {
        return new TuneText(time, key, quartersPerMinute).read(text, null);
    }

    private Tune read(String text, @Nullable List<Integer> order) {
        String[] bars = text.split("\\|");
        for (int m = 0; m < bars.length; m++) {
            readMeasure(m, bars[m].strip());
        }
        List<Integer> straight = new ArrayList<>();
        measures.forEach(measure -> straight.add(measure.index()));
        PlayOrder playOrder = new PlayOrder(order == null ? straight : order);
        Tempo tempo = new Tempo(quartersPerMinute, true);
        return new Tune("test", "P1", measures, events, harmonies, tempo, playOrder, List.of());
    }

    private void readMeasure(int m, String bar) {
        Fraction at = Fraction.ZERO;
        for (String token : bar.split("\\s+")) {
            if (token.equals("[?]")) {
                harmonies.add(Harmony.unwrittenFrom(m));
                continue;
            }
            if (token.startsWith("[")) {
                harmonies.add(new Harmony(m, at, chord(token.substring(1, token.length() - 1))));
                continue;
            }
            String[] parts = token.split("\\*");
            Fraction duration = parts.length == 1 ? Fraction.QUARTER : Fraction.parse(parts[1]);
            List<Pitch> pitches = new ArrayList<>();
            for (String name : parts[0].equals("r") ? new String[0] : parts[0].split("\\+")) {
                pitches.add(Pitch.parse(name));
            }
            List<Integer> notes = new ArrayList<>();
            for (int i = 0; i < Math.max(1, pitches.size()); i++) {
                notes.add(events.size());
            }
            events.add(new Event(events.size(), m, at, duration, pitches, notes));
            at = at.plus(duration);
        }
        boolean pickUp = m == 0 && at.compareTo(time.measureLength()) < 0;
        Fraction offset = pickUp ? time.measureLength().minus(at) : Fraction.ZERO;
        measures.add(new Measure(m, String.valueOf(m + 1), at, offset, time, key));
    }

    private static ChordSymbol chord(String name) {
        return name.endsWith("m")
                ? ChordSymbol.minor(PitchClass.parse(name.substring(0, name.length() - 1)))
                : ChordSymbol.major(PitchClass.parse(name));
    }
}
