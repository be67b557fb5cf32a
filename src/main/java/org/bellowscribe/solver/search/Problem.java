package org.bellowscribe.solver.search;

import java.util.List;

/**
 * The integer problem. For each event one option and one move of it are chosen. The cost is the sum of the options, the
 * moves, and for each flow edge (each different pair of neighbours in the order of play) the pair cost. Every place (gap
 * between events) has one opening, the same on every pass; it changes over an event by the amount of the move and stays
 * within {@code lowest..highest}. Each event is charged for the opening at its end too.
 *
 * @param order events in the order in which they sound, indices into {@code options}
 * @param edges flow edges, each different pair of neighbours of the order once
 * @param options for each event its options; none may be empty
 * @param pairs for each edge the cost of [option before][option after], 0 or more
 * @param zones for each event what the opening at its end costs
 * @param lowest smallest opening
 * @param highest largest opening
 * @param again true if the last place must be as open as the first, within the margin
 * @param margin how far the last place may differ from the first, 0 or more
 * @param startLow smallest opening at the start, at least {@code lowest}
 * @param startHigh largest opening at the start, at most {@code highest}
 * @param unit what one point costs, 1 or more; what an answer costs beyond whole points only decides between answers of as
 *     many points
 */
public record Problem(
        List<Integer> order,
        List<Edge> edges,
        List<List<Option>> options,
        List<int[][]> pairs,
        List<Zones> zones,
        int lowest,
        int highest,
        boolean again,
        int margin,
        int startLow,
        int startHigh,
        int unit) {

    /** More than any cost; small enough that a few of them can be added up. */
    public static final int NEVER = 1 << 28;

    /**
     * Two events that follow each other at some time.
     *
     * @param from the event before
     * @param to the event after
     */
    public record Edge(int from, int to) {}

    /** Copies the lists. */
    public Problem {
        order = List.copyOf(order);
        edges = List.copyOf(edges);
        options = options.stream().map(List::copyOf).toList();
        pairs = List.copyOf(pairs);
        zones = List.copyOf(zones);
    }

    /** Returns the problem with other options and pair costs for the same events. */
    public Problem with(List<List<Option>> otherOptions, List<int[][]> otherPairs) {
        return with(otherOptions, otherPairs, zones);
    }

    /** Returns the problem with other costs of all kinds for the same events. */
    public Problem with(List<List<Option>> otherOptions, List<int[][]> otherPairs, List<Zones> otherZones) {
        return new Problem(
                order,
                edges,
                otherOptions,
                otherPairs,
                otherZones,
                lowest,
                highest,
                again,
                margin,
                startLow,
                startHigh,
                unit);
    }

    /** Returns the whole points of a cost or a bound; {@link Integer#MAX_VALUE} stays what it is. */
    public int points(int cost) {
        return cost == Integer.MAX_VALUE ? cost : Math.floorDiv(cost, unit);
    }

    /** Returns the problem as it is, with a point that costs so much. */
    public Problem withUnit(int costOfPoint) {
        return new Problem(
                order, edges, options, pairs, zones, lowest, highest, again, margin, startLow, startHigh, costOfPoint);
    }

    /** Returns the number of events. */
    public int size() {
        return options.size();
    }

    /** Returns the exact cost of an assignment, but for its openings. */
    public int cost(int[] option, int[] move) {
        int sum = 0;
        for (int e = 0; e < size(); e++) {
            Option chosen = options.get(e).get(option[e]);
            sum += chosen.cost() + chosen.moves().get(move[e]).cost();
        }
        for (int k = 0; k < edges.size(); k++) {
            sum += pairs.get(k)[option[edges.get(k).from()]][option[edges.get(k).to()]];
        }
        return sum;
    }

    /** Returns true if no opening costs anything. */
    boolean isFree() {
        return zones.stream().allMatch(Zones::isFree);
    }

    /** Returns what the openings cost, of which each place has one (two for each event: before, after). */
    public int openingCost(int[] openings) {
        int sum = 0;
        for (int e = 0; e < size(); e++) {
            sum += zones.get(e).at(openings[2 * e + 1]);
        }
        return sum;
    }
}
