package org.bellowscribe.solver.search;

/** The ceiling that is known before any pass: bounds without openings, with air at its price. */
final class PricedCeiling implements Ceiling {

    private final Problem problem;
    private final Limits limits;

    PricedCeiling(Problem problem, Limits limits) {
        this.problem = problem;
        this.limits = limits;
    }

    @Override
    public boolean allows(int e, int x, int c, int limit) {
        return limits.through(e, x, c) <= limit + Limits.SLACK;
    }

    @Override
    public StepFunction clipEnding(int e, int x, int c, StepFunction ending, int limit) {
        double own = problem.options().get(e).get(c).cost() + limits.prices.leastMove(e, c);
        ending.clip(limits.outside(e, x, c) + own, limits.prices.price[e], limit);
        return ending;
    }

    @Override
    public StepFunction clipBeginning(int e, int x, int c, StepFunction beginning, int limit) {
        beginning.clip(limits.outside(e, x, c), limits.prices.price[e], limit);
        return beginning;
    }

    // The price of air may give back what the moves cost.
    @Override
    public double room(int e, int x, int c, int limit) {
        return Bounds.NEVER;
    }

    @Override
    public double spare(int e, int f, int x, int c, int limit) {
        return limits.spare(e, f, x, c, limit);
    }

    @Override
    public double ahead(int e, int x, int c) {
        return limits.ahead(e, x, c);
    }
}
