package org.bellowscribe.fit;

import java.util.Arrays;
import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Pitch;

/**
 * Estimates at a glance how hard a tune is in a key: the easiest way through its lowest notes by reversals, rows and
 * jumps, and the chords that the left hand lacks. It only chooses what is worth solving; its points are no cost.
 */
final class Glance {

    // Engineering estimates near the points of the usual manner.
    private static final int REVERSAL = 3;
    private static final int ROW_CHANGE = 4;
    private static final int JUMP = 2;
    private static final int REACH = 3;

    private final int[] melody;
    private final Tune tune;

    Glance(Tune tune) {
        this.tune = tune;
        melody = tune.events().stream()
                .filter(event -> !event.isRest())
                .mapToInt(event -> event.pitches().stream()
                        .mapToInt(Pitch::midiNumber)
                        .min()
                        .orElseThrow())
                .toArray();
    }

    /** Returns the points of a key in which every note is there. */
    int points(Compass compass, int semitones) {
        List<Compass.Place> before = List.of();
        int[] points = new int[0];
        for (int midiNumber : melody) {
            List<Compass.Place> places = compass.places(midiNumber + semitones);
            int[] next = new int[places.size()];
            for (int i = 0; i < next.length; i++) {
                next[i] = cheapest(before, points, places.get(i));
            }
            before = places;
            points = next;
        }
        return Arrays.stream(points).min().orElse(0) + compass.missingHarmony(tune, semitones);
    }

    private static int cheapest(List<Compass.Place> before, int[] points, Compass.Place place) {
        int least = points.length == 0 ? 0 : Integer.MAX_VALUE;
        for (int i = 0; i < points.length; i++) {
            least = Math.min(least, points[i] + step(before.get(i), place));
        }
        return least;
    }

    private static int step(Compass.Place from, Compass.Place to) {
        return (from.direction() == to.direction() ? 0 : REVERSAL)
                + (from.row() == to.row() ? 0 : ROW_CHANGE)
                + (Math.abs(from.number() - to.number()) <= REACH ? 0 : JUMP);
    }
}
