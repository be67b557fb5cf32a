package org.bellowscribe.solver.search;

import java.util.Arrays;

/**
 * What it costs to end an event with the bellows so open: points that are the same within a zone of openings. The first
 * zone goes on below all openings, the last one above.
 *
 * @param from smallest opening of each zone, ascending; at least one
 * @param points points of each zone, 0 or more
 */
public record Zones(int[] from, int[] points) {

    /** No opening costs anything. */
    public static final Zones FREE = new Zones(new int[] {0}, new int[] {0});

    // Beyond every bellows, and small enough to be added to.
    private static final int FAR = 250_000_000;

    /** Returns the points at an opening. */
    public int at(int opening) {
        return points[zone(opening)];
    }

    private int zone(int opening) {
        int zone = 0;
        while (zone + 1 < from.length && from[zone + 1] <= opening) {
            zone++;
        }
        return zone;
    }

    /** Returns true if no opening costs anything. */
    boolean isFree() {
        return Arrays.stream(points).allMatch(each -> each == 0);
    }

    /** Returns these zones with all points some times as dear. */
    public Zones times(int scale) {
        return new Zones(from, Arrays.stream(points).map(each -> scale * each).toArray());
    }

    /** Returns the smallest and the largest opening around another one that cost no more than some points. */
    int[] around(int opening, int most) {
        int first = zone(opening);
        int last = first;
        while (first > 0 && points[first - 1] <= most) {
            first--;
        }
        while (last + 1 < from.length && points[last + 1] <= most) {
            last++;
        }
        return new int[] {first == 0 ? -FAR : from[first], last + 1 == from.length ? FAR : from[last + 1] - 1};
    }

    /** Returns the least points by the opening counted from a reference that lies between two openings. */
    StepFunction least(int low, int high) {
        StepFunction given = new StepFunction(points.length);
        for (int zone = 0; zone < points.length; zone++) {
            given.append(
                    zone == 0 ? -FAR : from[zone], zone + 1 == points.length ? FAR : from[zone + 1] - 1, points[zone]);
        }
        StepFunction least = new StepFunction(points.length);
        least.setMoved(given, -high, -low, 0);
        return least;
    }
}
