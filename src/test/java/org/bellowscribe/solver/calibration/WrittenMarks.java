package org.bellowscribe.solver.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/** The marks of a solution in the words of the cases. */
final class WrittenMarks {

    private WrittenMarks() {}

    /**
     * Returns the marks with whatever was not asked left out as in the case, so that both lines are equal if all is as
     * asked.
     */
    static List<String> of(Solution solution, String word, List<String> asked) {
        List<String> marks = new ArrayList<>();
        for (int i = 0; i < solution.steps().size(); i++) {
            String one = i < asked.size() ? asked.get(i) : "?";
            marks.add(one.equals(".") ? "." : mark(solution, i, word, one));
        }
        return marks;
    }

    private static String mark(Solution solution, int i, String word, String asked) {
        Step step = solution.steps().get(i);
        return switch (word) {
            case "buttons" -> buttons(step, asked);
            case "hand" -> hand(solution, i, asked);
            case "left" -> left(step);
            case "air" -> step.air() == AirUse.NONE ? "-" : "a";
            default -> throw new IllegalArgumentException("The word (%s) must be known.".formatted(word));
        };
    }

    private static String buttons(Step step, String asked) {
        boolean pull = step.direction() == BellowsDirection.PULL;
        if (asked.equals("push") || asked.equals("pull")) {
            return pull ? "pull" : "push";
        }
        String held = asked.startsWith("=") && step.held() ? "=" : "";
        return held
                + step.buttons().stream()
                        .map(button -> button.id() + (pull ? "'" : ""))
                        .collect(Collectors.joining("+"));
    }

    private static String hand(Solution solution, int i, String asked) {
        int place = solution.steps().get(i).handOn();
        boolean same = i > 0 && solution.steps().get(i - 1).handOn() == place;
        return asked.equals("=") && same ? "=" : String.valueOf(place);
    }

    private static String left(Step step) {
        return step.leftHand().isEmpty()
                ? "_"
                : step.leftHand().stream().map(WrittenMarks::sound).collect(Collectors.joining("+"));
    }

    private static String sound(LeftHandPlay play) {
        LeftHandSound sound = play.sound();
        return sound == null ? "-" : sound.label();
    }
}
