package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbers of a concertina's buttons: 1 to 10 in the row of the first key, 11 to 20 in that of the second, so that 1
 * to 5 and 11 to 15 lie under the left hand (first source of anglo-cg-20); then the rows of accidentals, from 21 (common practice, no source). No number stands twice.
 */
public final class ConcertinaNumbers {

    private final Map<Integer, Integer> before = new HashMap<>();

    /** Numbers the buttons of an instrument. */
    public ConcertinaNumbers(Instrument instrument) {
        List<Integer> rows = new ArrayList<>(HomeKeys.of(instrument).keySet());
        for (int row = 1; row <= instrument.rows(); row++) {
            if (!rows.contains(row)) {
                rows.add(row);
            }
        }
        int columns =
                instrument.buttons().stream().mapToInt(Button::number).max().orElse(0);
        for (int i = 0; i < rows.size(); i++) {
            before.put(rows.get(i), i * columns);
        }
    }

    /** Returns the number of a button. */
    public int of(Button button) {
        return before.getOrDefault(button.row(), 0) + button.number();
    }
}
