package org.bellowscribe.solver.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Prices of air. Every place with a fixed opening (the end of a loop, say) asks that the air of a stretch adds up. A
 * price per unit of air at that place, added to the cost, gives a lower bound that knows of the bellows although it looks
 * at no opening (Lagrangian relaxation). The best prices are found by following the slope of that bound.
 */
final class Prices {

    // The bound is worth no more evaluations than these; a search for one price settles in about eight.
    private static final int EVALUATIONS = 14;
    private static final int ROUNDS = 2;
    // Points per unit of air; an air press costs about 0.001.
    private static final double FIRST_STEP = 0.0004;
    // In points.
    private static final double GOOD_ENOUGH = 0.02;

    private final Problem problem;
    private final Graph graph;
    private final Node node;
    private final double[] multiplier;
    /** For each event the price of air that enters during it. */
    final double[] price;
    /** For each event the most that the constraints at or below it can give back: in its own stretch, and in all. */
    final double[] refundLocal;

    final double[] refund;
    private final int[] targetLow;
    private final int[] targetHigh;
    private final List<List<Integer>> constraints = new ArrayList<>();
    private final List<List<Integer>> members = new ArrayList<>();
    /** Events that lead to the place whose price is being sought. */
    private final boolean[] onTheWay;

    private final double[][] cost;
    private final double[][] moved;
    /** For each event and option the least that its moves cost at the settled prices. */
    private final double[][] leastMove;

    Prices(Problem problem, Graph graph, Node node) {
        this.problem = problem;
        this.graph = graph;
        this.node = node;
        int n = graph.size;
        multiplier = new double[n];
        price = new double[n];
        refundLocal = new double[n];
        refund = new double[n];
        targetLow = new int[n];
        targetHigh = new int[n];
        onTheWay = new boolean[n];
        cost = new double[n][];
        moved = new double[n][];
        leastMove = new double[n][];
        graph.firsts.forEach(root -> {
            constraints.add(new ArrayList<>());
            members.add(new ArrayList<>());
        });
        for (int e : graph.visit) {
            members.get(graph.stretch[e]).add(e);
            if (findTarget(e)) {
                constraints.get(graph.stretch[e]).add(e);
            }
        }
        for (int s = 0; s < members.size(); s++) {
            maximize(s);
        }
        settle();
    }

    // The openings, counted from the reference, that an event may end at; false if any.
    private boolean findTarget(int e) {
        int reference = graph.referenceIndex(e);
        if (graph.anchor[graph.after(e)]) {
            int end = graph.anchorIndex[graph.after(e)];
            targetLow[e] = node.leastRise(graph, end, reference);
            targetHigh[e] = node.mostRise(graph, end, reference);
            return true;
        }
        if (problem.again() && e == graph.last) {
            targetLow[e] = -problem.margin() - node.sumHigh[reference];
            targetHigh[e] = problem.margin() - node.sumLow[reference];
            return true;
        }
        return false;
    }

    private void maximize(int stretch) {
        int rounds = constraints.get(stretch).size() > 1 ? ROUNDS : 1;
        for (int round = 0; round < rounds; round++) {
            for (int e : constraints.get(stretch)) {
                markWay(e, true);
                maximize(stretch, e);
                markWay(e, false);
            }
        }
    }

    private void markWay(int target, boolean mark) {
        int e = target;
        while (e >= 0 && graph.stretch[e] == graph.stretch[target]) {
            onTheWay[e] = mark;
            e = graph.parent[e];
        }
    }

    // The bound is concave and piecewise linear in one price: walk until its slope turns, then cut where the two lines
    // meet.
    private void maximize(int stretch, int e) {
        Line here = line(stretch, e, multiplier[e]);
        int direction = here.slope > 0 ? 1 : here.slope < 0 ? -1 : 0;
        if (direction == 0) {
            return;
        }
        double step = FIRST_STEP * problem.unit();
        Line beyond = here;
        int left = EVALUATIONS;
        while (left-- > 0 && beyond.slope * direction > 0) {
            here = beyond;
            beyond = line(stretch, e, here.at + direction * step);
            step *= 2;
        }
        Line best = here.height >= beyond.height ? here : beyond;
        while (left-- > 0 && here.slope != beyond.slope) {
            double at = (beyond.height - beyond.slope * beyond.at - here.height + here.slope * here.at)
                    / (here.slope - beyond.slope);
            double promised = here.height + here.slope * (at - here.at);
            if (promised <= best.height + GOOD_ENOUGH * problem.unit()) {
                break;
            }
            Line middle = line(stretch, e, at);
            best = middle.height > best.height ? middle : best;
            if (middle.slope * direction > 0) {
                here = middle;
            } else {
                beyond = middle;
            }
        }
        multiplier[e] = best.at;
    }

    private record Line(double at, double height, double slope) {}

    // The bound of one stretch as a function of the price at one of its places: height and slope there.
    private Line line(int stretch, int target, double value) {
        multiplier[target] = value;
        List<Integer> events = members.get(stretch);
        double refunds = 0;
        for (int e : constraints.get(stretch)) {
            refunds += give(e);
        }
        sumPrices(events);
        for (int i = events.size() - 1; i >= 0; i--) {
            evaluate(events.get(i));
        }
        int root = events.get(0);
        double least = Double.MAX_VALUE;
        double air = 0;
        for (int c = 0; c < cost[root].length; c++) {
            if (cost[root][c] < least) {
                least = cost[root][c];
                air = moved[root][c];
            }
        }
        // At price 0 every opening within the target is right: no slope.
        double wanted = value > 0 ? targetHigh[target] : value < 0 ? targetLow[target] : clampToTarget(target, air);
        return new Line(value, least - refunds, air - wanted);
    }

    private double clampToTarget(int e, double air) {
        return Math.max(targetLow[e], Math.min(targetHigh[e], air));
    }

    private double give(int e) {
        return Math.max(multiplier[e] * targetLow[e], multiplier[e] * targetHigh[e]);
    }

    private void sumPrices(List<Integer> events) {
        for (int i = events.size() - 1; i >= 0; i--) {
            int e = events.get(i);
            price[e] = multiplier[e];
            for (int f : graph.children.get(e)) {
                price[e] += graph.stretch[f] == graph.stretch[e] ? price[f] : 0;
            }
        }
    }

    // Least cost from an event to the ends of its stretch, and the air on the way to the target on that path.
    private void evaluate(int e) {
        List<Option> options = problem.options().get(e);
        cost[e] = new double[options.size()];
        moved[e] = new double[options.size()];
        for (int c = 0; c < options.size(); c++) {
            if (!node.allows(e, c)) {
                cost[e][c] = Surroundings.NEVER;
                continue;
            }
            double sum = options.get(c).cost();
            for (int k : graph.jumpsFrom.get(e)) {
                sum += JumpCost.least(problem, node, k, c);
            }
            double air = 0;
            for (int f : graph.children.get(e)) {
                int next = bestNext(e, f, c);
                double ahead = graph.stretch[f] == graph.stretch[e] ? cost[f][next] : 0;
                sum += problem.pairs().get(graph.treeEdge[f])[c][next] + ahead;
                if (onTheWay[f]) {
                    air += moved[f][next];
                }
            }
            double signed = price[e] * options.get(c).sign();
            double least = Double.MAX_VALUE;
            double own = 0;
            for (Move move : options.get(c).moves()) {
                int amount = signed > 0 ? move.low() : move.high();
                if (move.cost() + signed * amount < least) {
                    least = move.cost() + signed * amount;
                    own = options.get(c).sign() * amount;
                }
            }
            cost[e][c] = Math.min(Surroundings.NEVER, sum + least);
            moved[e][c] = own + air;
        }
    }

    private int bestNext(int e, int f, int c) {
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        boolean same = graph.stretch[f] == graph.stretch[e];
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int j = 0; j < pair.length; j++) {
            double value = pair[j] + (same ? cost[f][j] : node.allows(f, j) ? 0 : Surroundings.NEVER);
            if (value < least) {
                least = value;
                best = j;
            }
        }
        return best;
    }

    private void settle() {
        for (int i = graph.size - 1; i >= 0; i--) {
            int e = graph.visit[i];
            price[e] = multiplier[e];
            refund[e] = give(e);
            refundLocal[e] = give(e);
            for (int f : graph.children.get(e)) {
                refund[e] += refund[f];
                if (graph.stretch[f] == graph.stretch[e]) {
                    price[e] += price[f];
                    refundLocal[e] += refundLocal[f];
                }
            }
        }
        for (int e = 0; e < graph.size; e++) {
            List<Option> options = problem.options().get(e);
            leastMove[e] = new double[options.size()];
            for (int c = 0; c < options.size(); c++) {
                leastMove[e][c] = leastMove(price[e], options.get(c));
            }
        }
    }

    /** Returns the least that an option's own moves cost at an event when air has its price. */
    double leastMove(int e, int c) {
        return leastMove[e][c];
    }

    private double leastMove(double priceOfAir, Option option) {
        double signed = priceOfAir * option.sign();
        double least = Double.MAX_VALUE;
        for (Move move : option.moves()) {
            least = Math.min(least, move.cost() + signed * (signed > 0 ? move.low() : move.high()));
        }
        return least;
    }
}
