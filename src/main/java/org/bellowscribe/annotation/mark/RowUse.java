package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.ConcertinaNumbers;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Solution;
import org.jspecify.annotations.Nullable;

/** Which row of buttons is used most in a tune; only the other rows need a sign. */
public final class RowUse {

    private final int main;
    private final @Nullable ConcertinaNumbers numbers;
    private final List<Integer> others = new ArrayList<>();

    private RowUse(int main, int rows, @Nullable ConcertinaNumbers numbers) {
        this.main = main;
        this.numbers = numbers;
        for (int row = 1; row <= rows; row++) {
            if (row != main) {
                others.add(row);
            }
        }
    }

    /**
     * Counts the buttons of all written note groups; of rows used alike the outermost counts as used most.
     */
    public static RowUse of(Solution solution, Instrument instrument) {
        SortedMap<Integer, Integer> uses = new TreeMap<>();
        solution.steps().forEach(step -> step.buttons().forEach(button -> uses.merge(button.row(), 1, Integer::sum)));
        int main = 1;
        for (int row : uses.keySet()) {
            if (uses.getOrDefault(row, 0) > uses.getOrDefault(main, 0)) {
                main = row;
            }
        }
        return ofMain(main, instrument);
    }

    /**
     * Takes a row as the one used most.
     *
     * @param main 1 is the outer row
     */
    public static RowUse ofMain(int main, Instrument instrument) {
        return new RowUse(
                main, instrument.rows(), instrument.grip().strapped() ? new ConcertinaNumbers(instrument) : null);
    }

    /** Returns the row used most; 1 is the outer row. */
    public int main() {
        return main;
    }

    /** Returns true if the numbers of the buttons tell the rows apart, as those of a concertina do. */
    boolean isNumbered() {
        return numbers != null;
    }

    /** Returns the number of a button with the sign of its row; that of a concertina needs no sign. */
    public String label(Button button, ButtonLabels labels) {
        if (numbers != null) {
            return String.valueOf(numbers.of(button));
        }
        String number = String.valueOf(button.number());
        return button.row() == main ? number : labels.otherRow(others.indexOf(button.row()), number);
    }
}
