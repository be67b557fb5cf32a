package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.theory.PitchClass;

/**
 * What the left hand sounds, for those who play along. Only a bass and a chord that begin together are one symbol with a
 * bass under it. A bass alone stands for the harmony that is meant there, and a chord that follows it within that harmony
 * changes nothing (alternating and stand-in basses: common practice, no source).
 *
 * @param root root of the chord
 * @param third its third; {@code NONE} where none sounds
 * @param bass the bass; the root, unless another bass is under it
 */
record SoundingChord(PitchClass root, Third third, PitchClass bass) {

    /** A stroke from which on another chord sounds. */
    record Change(Stroke stroke, SoundingChord chord) {}

    /** Returns the first stroke of every section and all those at which what sounds changes, in score order. */
    static List<Change> changes(Arrangement arrangement) {
        Set<Integer> starts = PlayNeighbors.of(
                        arrangement.tune(),
                        event -> arrangement.step(event.index()).leftHand().stream()
                                .anyMatch(play -> play.button() != null))
                .sectionStarts();
        List<Change> changes = new ArrayList<>();
        SoundingMoment last = null;
        SoundingChord now = null;
        List<SoundingMoment> moments = SoundingMoment.all(arrangement);
        for (int i = 0; i < moments.size(); i++) {
            SoundingMoment moment = moments.get(i);
            SoundingChord before = now;
            now = moment.sounding(last, i + 1 < moments.size() ? moments.get(i + 1) : null, before);
            boolean first = starts.contains(moment.event()) && (last == null || last.event() != moment.event());
            if (first || !now.equals(before)) {
                changes.add(new Change(moment.strokes().get(0), now));
            }
            last = moment;
        }
        return changes;
    }

    /** Returns true if this is the same chord, whatever bass is under it. */
    boolean isOn(PitchClass otherRoot, Third otherThird) {
        return root.equals(otherRoot) && third == otherThird;
    }
}
