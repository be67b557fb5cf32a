package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Solution;

/** Which row of buttons is used most in a tune; only the other rows need a sign. */
final class RowUse {

    private final int main;
    private final List<Integer> others = new ArrayList<>();

    private RowUse(int main, int rows) {
        this.main = main;
        for (int row = 1; row <= rows; row++) {
            if (row != main) {
                others.add(row);
            }
        }
    }

    /**
     * Counts the buttons of all written note groups; of rows used alike the outermost counts as used most.
     *
     * @param rows number of rows of the instrument
     */
    static RowUse of(Solution solution, int rows) {
        SortedMap<Integer, Integer> uses = new TreeMap<>();
        solution.steps().forEach(step -> step.buttons().forEach(button -> uses.merge(button.row(), 1, Integer::sum)));
        int main = 1;
        for (int row : uses.keySet()) {
            if (uses.getOrDefault(row, 0) > uses.getOrDefault(main, 0)) {
                main = row;
            }
        }
        return new RowUse(main, rows);
    }

    /** Returns the row used most; 1 is the outer row. */
    int main() {
        return main;
    }

    /** Returns the number of a button with the sign of its row. */
    String label(Button button, ButtonLabels labels) {
        String number = String.valueOf(button.number());
        return button.row() == main ? number : labels.otherRow(others.indexOf(button.row()), number);
    }
}
