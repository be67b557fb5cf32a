package org.bellowscribe.solver.search;

/** The pointwise minimum of functions that come one after another. */
final class Lowest {

    private static final int USUAL_SIZE = 64;

    private StepFunction sum = new StepFunction(USUAL_SIZE);
    private StepFunction next = new StepFunction(USUAL_SIZE);

    void clear() {
        sum.clear();
    }

    boolean isEmpty() {
        return sum.isEmpty();
    }

    /** Takes in a function that is raised by some points. */
    void add(StepFunction function, int raise) {
        if (sum.isEmpty()) {
            sum.setRaised(function, raise);
            return;
        }
        next.setLowest(sum, function, raise);
        StepFunction kept = sum;
        sum = next;
        next = kept;
    }

    /** Returns what was taken in, which holds until something else is. */
    StepFunction function() {
        return sum;
    }

    /** Returns a copy of what was taken in. */
    StepFunction copy() {
        return sum.trimmed();
    }
}
