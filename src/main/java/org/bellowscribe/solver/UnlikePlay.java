package org.bellowscribe.solver;

import org.jspecify.annotations.Nullable;

/**
 * A measure that is not played as most of the measures that are written the same.
 *
 * @param measure 0-based index of the measure
 * @param fellow 0-based index of an equal measure that is played as most are
 * @param dearer points that the tune would cost more if it were played as its fellow, 1 or more; null if no such marks
 *     were found
 */
public record UnlikePlay(int measure, int fellow, @Nullable Integer dearer) {}
