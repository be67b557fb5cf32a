package org.bellowscribe.exercise;

import java.util.List;

/**
 * Which exercises to write.
 *
 * @param orders in which orders, each once; none for no exercises
 * @param times how long changes of the hand take
 */
public record ExerciseChoice(List<Order> orders, ChangeTimes times) {

    /** None. */
    public static final ExerciseChoice NONE = new ExerciseChoice(List.of(), ChangeTimes.usual());

    /** Copies the list. */
    public ExerciseChoice {
        orders = List.copyOf(orders);
    }
}
