package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Moment;

/**
 * The cases of the left-hand rules: the first beat of a measure, a bass on another beat, a chord; and the same
 * under the note with which the tune ends, where the home chord is wanted most.
 */
final class BeatCase {

    static final List<String> NAMES =
            List.of("first-beat", "bass", "chord", "closing-first-beat", "closing-bass", "closing-chord");

    private BeatCase() {}

    static String of(Moment moment, LeftHandPlay play) {
        boolean chord = play.wanted().kind() == LeftHandKind.CHORD;
        String beat = play.wanted().firstBeat() ? "first-beat" : chord ? "chord" : "bass";
        return moment.closing() ? "closing-" + beat : beat;
    }
}
