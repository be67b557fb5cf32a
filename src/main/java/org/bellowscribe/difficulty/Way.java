package org.bellowscribe.difficulty;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Choice;

/**
 * A way to play a note group.
 *
 * @param direction the way the bellows go
 * @param buttons one button for each pitch
 * @param halves place of the hand, in halves of a button
 * @param stretches how many fingers leave their own button
 */
record Way(BellowsDirection direction, List<Button> buttons, int halves, int stretches) {

    /** The bellows turn from one note to the next. */
    static final int TURN = 1;

    /** A button stays down from one note to the next. */
    static final int HELD = 2;

    /** No row is that of the note before. */
    static final int ROW = 4;

    /** The hand moves. */
    static final int MOVE = 8;

    private record Place(BellowsDirection direction, List<Button> buttons, int halves) {}

    /** Returns what choices come to: of those that differ by fingers alone the one with fewest stretches. */
    static List<Way> of(List<Choice> choices) {
        Map<Place, Way> ways = new LinkedHashMap<>();
        for (Choice choice : choices) {
            int stretches = (int) IntStream.range(0, choice.buttons().size())
                    .filter(choice::isStretched)
                    .count();
            int halves = 2 * choice.handOn() + (choice.buttons().stream().anyMatch(button -> button.row() > 1) ? 1 : 0);
            ways.merge(
                    new Place(choice.direction(), choice.buttons(), halves),
                    new Way(choice.direction(), choice.buttons(), halves, stretches),
                    (one, other) -> one.stretches <= other.stretches ? one : other);
        }
        return List.copyOf(ways.values());
    }

    /** Returns what happens between this note and the next: a sum of {@link #TURN} and the others. */
    int to(Way next) {
        boolean sameRow = buttons.stream()
                .anyMatch(button -> next.buttons.stream().anyMatch(other -> other.row() == button.row()));
        return (direction == next.direction ? 0 : TURN)
                + (Collections.disjoint(buttons, next.buttons) ? 0 : HELD)
                + (sameRow ? 0 : ROW)
                + (Math.abs(halves - next.halves) > 1 ? MOVE : 0);
    }
}
