package org.bellowscribe.annotation.mark;

import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.solver.Step;

/** Says in a few words how far the bellows are open. */
public final class OpeningText {

    /** Openings in twelfths of the capacity. */
    private static final int[] TWELFTHS = {0, 3, 4, 6, 8, 9, 12};

    private OpeningText() {}

    /** Returns the words for the opening before a step. */
    public static String before(Step step, Arrangement arrangement) {
        return of(step.openingBefore(), arrangement);
    }

    /** Returns the words for the opening after a step. */
    public static String after(Step step, Arrangement arrangement) {
        return of(step.openingAfter(), arrangement);
    }

    private static String of(int opening, Arrangement arrangement) {
        double capacity = 1000 * arrangement.instrument().bellows().capacity();
        return text(nearest(12 * opening / capacity), arrangement.style().words());
    }

    /** Returns the nearest of the openings; of two equally near the smaller. */
    private static int nearest(double twelfths) {
        int nearest = 0;
        for (int candidate : TWELFTHS) {
            if (Math.abs(candidate - twelfths) < Math.abs(nearest - twelfths)) {
                nearest = candidate;
            }
        }
        return nearest;
    }

    private static String text(int twelfths, WordLabels words) {
        return switch (twelfths) {
            case 0 -> words.closed();
            case 12 -> words.fullyOpen();
            case 6 -> words.opening().with("part", "1/2");
            default -> words.opening().with("part", twelfths % 4 == 0 ? twelfths / 4 + "/3" : twelfths / 3 + "/4");
        };
    }
}
