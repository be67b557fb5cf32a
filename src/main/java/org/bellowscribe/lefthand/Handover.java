package org.bellowscribe.lefthand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;

/**
 * Two strokes of which one is played right after the other, or both at once, on some pass.
 *
 * @param from 0-based place of the first among the strokes
 * @param to 0-based place of the other
 * @param seconds least time from the start of one to the start of the other; 0 if they are struck together
 * @param times how often in one playing of the tune
 */
record Handover(int from, int to, double seconds, int times) {

    private record Moment(double seconds, List<Integer> strokes) {}

    /**
     * Follows the strokes through every repeat and ending.
     *
     * @param strokes the strokes in score order
     * @return by place of the first, then of the other
     */
    static List<Handover> all(Tune tune, List<Stroke> strokes) {
        List<Moment> moments = moments(tune, strokes);
        SortedMap<Long, Handover> found = new TreeMap<>();
        for (int m = 0; m < moments.size(); m++) {
            List<Integer> now = moments.get(m).strokes();
            for (int i = 1; i < now.size(); i++) {
                add(found, now.get(i - 1), now.get(i), 0);
            }
            if (m > 0) {
                Moment before = moments.get(m - 1);
                double gap = moments.get(m).seconds() - before.seconds();
                before.strokes().forEach(from -> now.forEach(to -> add(found, from, to, gap)));
            }
        }
        return found.values().stream()
                .sorted(Comparator.comparingInt(Handover::from).thenComparingInt(Handover::to))
                .toList();
    }

    private static void add(SortedMap<Long, Handover> found, int from, int to, double seconds) {
        found.merge(
                (long) from << Integer.SIZE | to,
                new Handover(from, to, seconds, 1),
                (a, b) -> new Handover(from, to, Math.min(a.seconds, b.seconds), a.times + b.times));
    }

    /** Returns what is struck together, in the order of play, with the time since the start. */
    private static List<Moment> moments(Tune tune, List<Stroke> strokes) {
        List<List<Integer>> byEvent = new ArrayList<>();
        tune.events().forEach(event -> byEvent.add(new ArrayList<>()));
        for (int i = 0; i < strokes.size(); i++) {
            byEvent.get(strokes.get(i).event()).add(i);
        }
        List<Moment> moments = new ArrayList<>();
        double start = 0;
        for (int index : tune.eventOrder()) {
            Event event = tune.events().get(index);
            Stroke last = null;
            for (int place : byEvent.get(index)) {
                Stroke stroke = strokes.get(place);
                if (last == null || !last.offset().equals(stroke.offset())) {
                    moments.add(new Moment(start + tune.tempo().seconds(stroke.offset()), new ArrayList<>()));
                }
                moments.get(moments.size() - 1).strokes().add(place);
                last = stroke;
            }
            start += tune.seconds(event);
        }
        return moments;
    }
}
