package org.bellowscribe.solver.search;

/** The ceiling that is known before any pass: bounds without openings, with air at its price. */
final class PricedCeiling implements Ceiling {

    private final Problem problem;
    private final Prices prices;
    private final Surroundings bounds;
    private final Frame frame;

    PricedCeiling(Problem problem, Prices prices, Surroundings bounds, Frame frame) {
        this.problem = problem;
        this.prices = prices;
        this.bounds = bounds;
        this.frame = frame;
    }

    @Override
    public boolean allows(int e, int x, int c, int limit) {
        return bounds.through(e, x, c) <= limit + Surroundings.SLACK;
    }

    @Override
    public StepFunction clipEnding(int e, int x, int c, StepFunction ending, int limit) {
        double own = problem.options().get(e).get(c).cost() + prices.leastMove(e, c);
        ending.clip(outside(e, x, c) + own, prices.price[e], limit);
        return ending;
    }

    @Override
    public StepFunction clipBeginning(int e, int x, int c, StepFunction beginning, int limit) {
        beginning.clip(outside(e, x, c), prices.price[e], limit);
        return beginning;
    }

    @Override
    public Ceiling asTheyAre(int low, int high) {
        return this;
    }

    private double outside(int e, int x, int c) {
        return bounds.outside(e, x, c) + frame.priceOfStart(prices.price[e]);
    }

    // The price of air may give back what the moves cost.
    @Override
    public double room(int e, int x, int c, int limit) {
        return Surroundings.NEVER;
    }

    @Override
    public double spare(int e, int f, int x, int c, int limit) {
        return bounds.spare(e, f, x, c, limit);
    }

    @Override
    public double ahead(int e, int x, int c) {
        return bounds.ahead(e, x, c);
    }
}
