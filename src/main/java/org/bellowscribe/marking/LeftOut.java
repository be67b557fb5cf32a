package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;

/** What is played and moves the bellows, but stands nowhere on the sheet because its marks are not printed. */
final class LeftOut {

    private static final String AIR = "air";
    private static final String AIR_ON_COUNT = "air-on-count";
    private static final String FINGERS = "fingers";
    private static final String LEFT_HAND = "left-hand";

    private LeftOut() {}

    /**
     * Returns a note for each.
     *
     * @param marks ids of the marks that are printed
     */
    static List<Diagnostic> remarks(Solution solution, List<String> marks) {
        List<Diagnostic> remarks = new ArrayList<>();
        long presses = solution.steps().stream()
                .filter(step -> step.air() != AirUse.NONE)
                .count();
        if (presses > 0 && !marks.contains(AIR) && !marks.contains(AIR_ON_COUNT)) {
            remarks.add(note(
                    "The air button is pressed at %s, and the sheet does not say where."
                            .formatted(presses == 1 ? "1 note or rest" : presses + " notes or rests"),
                    "Maybe add air to --marks, or leave air out of --play."));
        }
        boolean sounds = solution.steps().stream()
                .flatMap(step -> step.leftHand().stream())
                .anyMatch(play -> play.sound() != null);
        if (sounds && !marks.contains(LEFT_HAND)) {
            remarks.add(note(
                    "The left hand takes part of the air, and the sheet does not say what it plays.",
                    "Maybe add left-hand to --marks, or leave left-hand out of --play."));
        }
        return remarks;
    }

    /**
     * Returns a note if fingers are fixed that the sheet does not show.
     *
     * @param marks ids of the marks that are printed
     */
    static List<Diagnostic> fingers(Pins pins, List<String> marks) {
        long fixed =
                pins.list().stream().filter(pin -> !pin.fingers().isEmpty()).count();
        return fixed == 0 || marks.contains(FINGERS)
                ? List.of()
                : List.of(note(
                        "The fingers of %s are fixed, and the sheet does not print fingers."
                                .formatted(fixed == 1 ? "1 note" : fixed + " notes"),
                        "Maybe add fingers to --marks."));
    }

    private static Diagnostic note(String text, String advice) {
        return Diagnostic.note(DiagnosticCode.NOT_PRINTED, Place.FILE, text, advice);
    }
}
