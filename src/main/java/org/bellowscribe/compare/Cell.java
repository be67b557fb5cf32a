package org.bellowscribe.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;

/**
 * What is played at an event, in words; empty where nothing is.
 *
 * @param direction {@code push} or {@code pull}
 * @param button ids of the buttons
 * @param finger their fingers
 * @param leftHand what the left hand sounds, stroke by stroke
 * @param air how the air button is pressed
 */
record Cell(String direction, String button, String finger, String leftHand, String air) {

    static Cell of(Step step) {
        return new Cell(
                step.direction().label(),
                step.buttons().stream().map(Button::id).collect(Collectors.joining("+")),
                step.fingers().stream().map(String::valueOf).collect(Collectors.joining("+")),
                step.leftHand().stream()
                        .map(Cell::label)
                        .filter(Objects::nonNull)
                        .collect(Collectors.joining(" ")),
                step.air() == AirUse.NONE ? "" : step.air() == AirUse.FULL ? "air" : "light air");
    }

    private static String label(LeftHandPlay play) {
        return play.sound() == null ? "-" : play.sound().label();
    }

    /** Returns all of it: direction, button, finger, left hand, air. */
    List<String> all() {
        return List.of(direction, button, finger, leftHand, air);
    }

    /** Returns what stands one under the other. */
    List<Line> lines(Cell other) {
        List<Line> lines = new ArrayList<>();
        add(lines, "", button, other.button);
        add(lines, "", direction, other.direction);
        add(lines, "finger ", finger, other.finger);
        add(lines, "left ", leftHand, other.leftHand);
        add(lines, "", air.isEmpty() && !other.air.isEmpty() ? "no air" : air, other.air);
        return lines;
    }

    private static void add(List<Line> lines, String what, String words, String other) {
        if (!words.isEmpty()) {
            lines.add(new Line(what + words, !words.equals(other)));
        }
    }

    /**
     * One thing of it.
     *
     * @param words what it says
     * @param differs true if the other way says otherwise
     */
    record Line(String words, boolean differs) {}
}
