package org.bellowscribe.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How far two markings of the same sheets agree, counted over notes. */
final class Agreement {

    private static final double ONE_BEAT = 1.000001;

    private int notes;
    private int buttons;
    private int directions;
    private int fingers;
    private int strokes;
    private int roots;
    private int presses;
    private int otherPresses;
    private int pressesMet;

    /** Counts a sheet: one marking, another, and where its notes lie in beats. */
    void add(Marking one, Marking other, List<Double> beats) {
        for (int i = 0; i < one.notes().size(); i++) {
            MarkedNote a = one.notes().get(i);
            MarkedNote b = other.notes().get(i);
            if (a != null && b != null) {
                add(a, b);
            }
        }
        List<Double> here = presses(one, beats);
        List<Double> there = presses(other, beats);
        presses += here.size();
        otherPresses += there.size();
        for (double place : there) {
            pressesMet += here.stream().anyMatch(each -> Math.abs(each - place) <= ONE_BEAT) ? 1 : 0;
        }
    }

    private void add(MarkedNote a, MarkedNote b) {
        notes++;
        buttons += a.buttons().equals(b.buttons()) ? 1 : 0;
        directions += a.direction() == b.direction() ? 1 : 0;
        fingers += a.fingers().equals(b.fingers()) ? 1 : 0;
        if (!a.leftHand().isEmpty() && !b.leftHand().isEmpty()) {
            strokes++;
            roots += a.root().equals(b.root()) ? 1 : 0;
        }
    }

    private static List<Double> presses(Marking marking, List<Double> beats) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            @Nullable MarkedNote note = marking.notes().get(i);
            if (note != null && note.air()) {
                places.add(beats.get(i));
            }
        }
        return places;
    }

    /** Returns the share of notes with the same button, in percent. */
    double button() {
        return percent(buttons, notes);
    }

    /** Returns the share of notes in the same direction, in percent. */
    double direction() {
        return percent(directions, notes);
    }

    /** Returns the share of notes under the same finger, in percent. */
    double finger() {
        return percent(fingers, notes);
    }

    /** Returns the share of notes with the same root in the left hand where both strike, in percent. */
    double root() {
        return percent(roots, strokes);
    }

    /** Returns the share of the other's presses of the air button that the one has within a beat, in percent. */
    double air() {
        return percent(pressesMet, otherPresses);
    }

    static double percent(int part, int all) {
        return 100.0 * part / Math.max(1, all);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.1f | %.1f | %.1f | %.1f | %d of %d (own %d)",
                button(),
                direction(),
                finger(),
                root(),
                pressesMet,
                otherPresses,
                presses);
    }
}
