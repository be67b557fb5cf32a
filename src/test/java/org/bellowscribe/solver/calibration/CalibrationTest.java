package org.bellowscribe.solver.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.solver.Solution;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The points of the manners bring out what a good teacher would write. */
class CalibrationTest {

    // Equal measures leave a gap to the bound, but none beyond the price of one.
    private static final int PRICE_OF_ONE_MEASURE = 6;

    private static final List<String> LINES = List.of("buttons", "hand", "left", "air");

    static List<Arguments> cases() {
        return CalibrationCase.all().stream()
                .map(each -> Arguments.of(Named.of(each.name(), each)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void marksAreThoseOfATeacher(CalibrationCase example) throws DiagnosedException {
        Solution solution = example.solve();
        List<String> wanted = new ArrayList<>();
        List<String> found = new ArrayList<>();
        for (String line : LINES) {
            List<String> asked = example.asked(line);
            if (!asked.isEmpty()) {
                int events = solution.steps().size();
                List<String> each = asked.size() == 1 ? Collections.nCopies(events, asked.get(0)) : asked;
                wanted.add(line + ": " + String.join(" ", each));
                found.add(line + ": " + String.join(" ", WrittenMarks.of(solution, line, each)));
            }
        }
        assertEquals(
                String.join("\n", wanted),
                String.join("\n", found),
                () -> example.get("why", "") + "\n" + solution.cost().byRule());
        int gap = solution.cost().total() - solution.cost().lowerBound();
        assertTrue(gap <= PRICE_OF_ONE_MEASURE, "proved but for " + gap + " points");
    }

    @Test
    void everyCaseSaysWhy() {
        for (CalibrationCase example : CalibrationCase.all()) {
            assertTrue(example.get("why", "").endsWith("."), example.name());
            assertTrue(!example.asked("buttons").isEmpty(), example.name());
        }
        assertTrue(CalibrationCase.all().size() >= 25);
    }
}
