package org.bellowscribe.solver.equal;

import org.bellowscribe.solver.search.Answer;

/**
 * What is played: the option and the move of each event.
 *
 * @param option index of an option by event
 * @param move index of one of its moves by event
 */
record Marks(int[] option, int[] move) {

    /** Returns the marks of an answer that was found. */
    static Marks of(Answer answer) {
        int[] option = answer.option();
        int[] move = answer.move();
        if (option == null || move == null) {
            throw new IllegalStateException("The answer must have been found.");
        }
        return new Marks(option, move);
    }
}
