package org.bellowscribe.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Measures that are played one after the other and drawn together: a section in one of its playings, or a part of a long
 * one.
 *
 * @param measures the measures, at least one; an event begins in one of them
 */
record Strip(List<PlayedMeasure> measures) {

    // So many measures still have room side by side on a telephone.
    private static final int MOST = 10;

    /** Copies the list. */
    Strip {
        measures = List.copyOf(measures);
    }

    /** Returns the strips of a performance: one ends wherever the player goes back, goes on or begins another playing. */
    static List<Strip> of(List<PlayedMeasure> played) {
        List<Strip> strips = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= played.size(); i++) {
            if (i == played.size() || !follows(played.get(i), played.get(i - 1))) {
                cut(played.subList(start, i), strips);
                start = i;
            }
        }
        return strips;
    }

    private static boolean follows(PlayedMeasure measure, PlayedMeasure before) {
        return measure.measure() == before.measure() + 1 && measure.pass() == before.pass();
    }

    private static void cut(List<PlayedMeasure> run, List<Strip> strips) {
        int parts = (run.size() + MOST - 1) / MOST;
        for (int part = 0; part < parts; part++) {
            Strip strip = new Strip(run.subList(part * run.size() / parts, (part + 1) * run.size() / parts));
            if (strip.end() > strip.first()) {
                strips.add(strip);
            }
        }
    }

    /** Returns the 0-based place of its first event in the performance. */
    int first() {
        return measures.get(0).first();
    }

    /** Returns the place behind its last event in the performance. */
    int end() {
        return measures.get(measures.size() - 1).end();
    }

    /** Returns its name, such as {@code Measures 1–8, 2nd time}. */
    String name() {
        PlayedMeasure from = measures.get(0);
        PlayedMeasure to = measures.get(measures.size() - 1);
        String which = measures.size() == 1
                ? "Measure " + from.number()
                : "Measures %s–%s".formatted(from.number(), to.number());
        return from.passes() == 1 && from.pass() == 1 ? which : which + ", " + from.time();
    }
}
