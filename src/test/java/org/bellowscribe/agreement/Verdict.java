package org.bellowscribe.agreement;

import java.util.List;
import java.util.Locale;

/** How far the program agrees with two players over some sheets. */
final class Verdict {

    private final Agreement first = new Agreement();
    private final Agreement second = new Agreement();
    private int notes;
    private int either;

    /** Counts a sheet as the program plays it. */
    void add(MarkedTune tune, Marking program) {
        List<Double> beats = tune.beats();
        first.add(program, tune.first(), beats);
        second.add(program, tune.second(), beats);
        for (int i = 0; i < beats.size(); i++) {
            MarkedNote played = program.notes().get(i);
            MarkedNote one = tune.first().notes().get(i);
            MarkedNote other = tune.second().notes().get(i);
            if (played != null && one != null && other != null) {
                notes++;
                either += played.isPlayedAs(one) || played.isPlayedAs(other) ? 1 : 0;
            }
        }
    }

    /** Returns how far it agrees with the first player. */
    Agreement first() {
        return first;
    }

    /** Returns how far it agrees with the second player. */
    Agreement second() {
        return second;
    }

    /** Returns the share of notes whose button and direction are those of at least one of the two, in percent. */
    double either() {
        return Agreement.percent(either, notes);
    }

    /** Returns the share of notes under the same finger, the mean over both players, in percent. */
    double finger() {
        return (first.finger() + second.finger()) / 2;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%d | %.1f | %s | %s", notes, either(), first, second);
    }
}
