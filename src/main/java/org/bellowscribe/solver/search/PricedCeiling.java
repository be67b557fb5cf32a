package org.bellowscribe.solver.search;

/** The ceiling that is known before any pass: bounds without openings, with air at its price. */
final class PricedCeiling implements Ceiling {

    private final Problem problem;
    private final Limits limits;
    /** True to look at the stretch of an event alone. */
    private final boolean alone;

    PricedCeiling(Problem problem, Limits limits, boolean alone) {
        this.problem = problem;
        this.limits = limits;
        this.alone = alone;
    }

    @Override
    public boolean allows(int e, int x, int c, int limit) {
        return limits.through(e, x, c, alone) <= limit + Limits.SLACK;
    }

    @Override
    public StepFunction clipEnding(int e, int x, int c, StepFunction ending, int limit) {
        Option option = problem.options().get(e).get(c);
        double own = option.cost() + limits.prices.leastMove(e, c);
        ending.clip(limits.outside(e, x, c, alone) + own, limits.prices.price[e], limit);
        return ending;
    }

    @Override
    public StepFunction clipBeginning(int e, int x, int c, StepFunction beginning, int limit) {
        beginning.clip(limits.outside(e, x, c, alone), limits.prices.price[e], limit);
        return beginning;
    }

    // The price of air may give back what the moves cost.
    @Override
    public double room(int e, int x, int c, int limit) {
        return Bounds.NEVER;
    }

    @Override
    public double spare(int e, int f, int x, int c, int limit) {
        return limits.spare(e, f, x, c, alone, limit);
    }

    @Override
    public double ahead(int e, int x, int c) {
        return limits.ahead(e, x, c, alone);
    }
}
