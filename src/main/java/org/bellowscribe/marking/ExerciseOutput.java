package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.exercise.ExerciseSheet;
import org.bellowscribe.exercise.Exercises;
import org.bellowscribe.exercise.Order;

/** The exercises of a tune, as far as they were asked for. */
final class ExerciseOutput {

    private ExerciseOutput() {}

    /** Returns the files; none if there is nothing to practice by itself. */
    static List<BesideSheet> of(List<Order> orders, DecidedTune tune, MarkSettings settings) throws DiagnosedException {
        List<BesideSheet> sheets = new ArrayList<>();
        if (!orders.isEmpty() && !Exercises.of(tune).isEmpty()) {
            for (Order order : orders) {
                byte[] bytes = ExerciseSheet.write(tune, settings.style(), settings.marks(), order)
                        .encode();
                sheets.add(new BesideSheet(StageChoice.ending(order), bytes));
            }
        }
        return sheets;
    }
}
