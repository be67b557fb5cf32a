package org.bellowscribe.agreement;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/**
 * What a player or the program writes at one note of a sheet.
 *
 * @param buttons ids of the buttons, such as {@code 2.5}
 * @param direction the way the bellows go
 * @param fingers 1 to 4, in the order of the pitches, separated by a blank
 * @param air true if the air button is pressed
 * @param leftHand the strokes that begin during the note and sound, such as {@code G} or {@code em}
 */
record MarkedNote(Set<String> buttons, BellowsDirection direction, String fingers, boolean air, List<String> leftHand) {

    MarkedNote {
        leftHand = List.copyOf(leftHand);
    }

    /** Returns what the program plays at a note. */
    static MarkedNote of(Step step) {
        return new MarkedNote(
                step.buttons().stream().map(Button::id).collect(Collectors.toCollection(TreeSet::new)),
                step.direction(),
                step.fingers().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                step.air() != AirUse.NONE,
                step.leftHand().stream()
                        .filter(play -> play.sound() != null)
                        .map(play -> String.valueOf(play.sound().label()))
                        .toList());
    }

    /** Returns the root of the first stroke of the left hand, such as {@code F#}. */
    String root() {
        String first = leftHand.get(0);
        return (first.endsWith("m") ? first.substring(0, first.length() - 1) : first).toUpperCase(Locale.ROOT);
    }

    /** Returns true if another plays the same buttons in the same direction. */
    boolean isPlayedAs(MarkedNote other) {
        return direction == other.direction && buttons.equals(other.buttons);
    }
}
