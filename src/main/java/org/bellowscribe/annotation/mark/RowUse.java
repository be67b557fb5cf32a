package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.ConcertinaNumbers;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.jspecify.annotations.Nullable;

/**
 * Which row bare numbers belong to: the one that the tune begins on, so that its name at the start is true of what stands
 * there. Only the other rows need a sign.
 */
public final class RowUse {

    /** So many notes count as the first ones: about two measures of a dance (common practice, no source). */
    private static final int FIRST_NOTES = 8;

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
     * Counts the buttons of the first note groups; of rows used alike there the one that the whole tune uses most is
     * taken, and of those used alike in all the outermost.
     */
    public static RowUse of(Solution solution, Instrument instrument) {
        List<List<Button>> groups = solution.steps().stream()
                .map(Step::buttons)
                .filter(each -> !each.isEmpty())
                .toList();
        SortedMap<Integer, Integer> first = uses(groups.subList(0, Math.min(FIRST_NOTES, groups.size())));
        SortedMap<Integer, Integer> all = uses(groups);
        Comparator<Integer> most = Comparator.<Integer>comparingInt(row -> first.getOrDefault(row, 0))
                .thenComparingInt(row -> all.getOrDefault(row, 0))
                .thenComparingInt(row -> -row);
        return ofMain(all.keySet().stream().max(most).orElse(1), instrument);
    }

    private static SortedMap<Integer, Integer> uses(List<List<Button>> groups) {
        SortedMap<Integer, Integer> uses = new TreeMap<>();
        groups.forEach(group -> group.forEach(button -> uses.merge(button.row(), 1, Integer::sum)));
        return uses;
    }

    /**
     * Takes a row as the one that bare numbers belong to.
     *
     * @param main 1 is the outer row
     */
    public static RowUse ofMain(int main, Instrument instrument) {
        return new RowUse(
                main, instrument.rows(), instrument.grip().strapped() ? new ConcertinaNumbers(instrument) : null);
    }

    /** Returns the row that bare numbers belong to; 1 is the outer row. */
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
        return label(button.row(), String.valueOf(button.number()), labels);
    }

    /** Returns a number of any sort with the sign of a row. */
    String label(int row, String number, ButtonLabels labels) {
        return row == main ? number : labels.otherRow(others.indexOf(row), number);
    }
}
