package org.bellowscribe.solver.explain;

import org.bellowscribe.solver.Solution;

/**
 * Another good way to play a tune, clearly different from the others that are shown.
 *
 * @param solution the marks, with their true cost; its lower bound is that of marks with these directions and buttons
 * @param made how it was looked for, a few words
 * @param differentPercent percent of the struck notes with another direction or another button than in the cheapest marks
 */
public record Alternative(Solution solution, String made, int differentPercent) {

    /** Returns the same way with its marks at other events: the written ones of a melody that is not played. */
    public Alternative with(Solution other) {
        return new Alternative(other, made, differentPercent);
    }
}
