package org.bellowscribe.annotation.mark;

import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.OpeningPart;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.solver.Step;

/** Says in a few words how far the bellows are open. */
public final class OpeningText {

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
        WordLabels words = arrangement.style().words();
        OpeningPart part = OpeningPart.nearest(opening, arrangement.instrument().bellows());
        return switch (part) {
            case CLOSED -> words.closed();
            case WIDE -> words.fullyOpen();
            default -> words.opening().with("part", part.fraction());
        };
    }
}
