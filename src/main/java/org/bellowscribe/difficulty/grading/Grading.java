package org.bellowscribe.difficulty.grading;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What each term weighs, and which points are which grade.
 *
 * @param id short id in kebab-case
 * @param summary one sentence for whom it is
 * @param weights points for one of what a term counts, 0 or more; a term that is not there weighs nothing
 * @param grades at least one, the easiest first, each from more points than the one before
 */
public record Grading(String id, String summary, Map<Term, Double> weights, List<Grade> grades) {

    /** Checks and copies what it says. */
    public Grading {
        Map<Term, Double> copy = new EnumMap<>(Term.class);
        copy.putAll(weights);
        weights = Collections.unmodifiableMap(copy);
        grades = List.copyOf(grades);
        weights.forEach((term, weight) -> {
            if (!(weight >= 0)) {
                throw new IllegalArgumentException(
                        "The weight (%s) of the term (%s) must be 0 or more.".formatted(weight, term.id()));
            }
        });
        for (int i = 1; i < grades.size(); i++) {
            if (!(grades.get(i).from() > grades.get(i - 1).from())) {
                throw new IllegalArgumentException("The grade (%d) must begin at more points than the one before."
                        .formatted(grades.get(i).number()));
            }
        }
    }

    /** Returns the points for one of what a term counts. */
    public double weight(Term term) {
        return weights.getOrDefault(term, 0.0);
    }

    /** Returns the grade of so many points: the last that begins at them or before, or the easiest. */
    public Grade grade(double points) {
        Grade found = grades.get(0);
        for (Grade grade : grades) {
            found = points >= grade.from() ? grade : found;
        }
        return found;
    }
}
