package org.bellowscribe.solver.equal;

import java.util.List;
import org.bellowscribe.solver.search.Answer;

/**
 * An answer in which equal measures are played alike where that is worth it.
 *
 * @param answer the answer; its cost and bound count the price of the measures that differ
 * @param differences measures that differ, in order of the groups
 * @param plain the answer without that price
 */
public record Alike(Answer answer, List<Outlier> differences, Answer plain) {

    /** Copies the list. */
    public Alike {
        differences = List.copyOf(differences);
    }
}
