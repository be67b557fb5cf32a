package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.lefthand.Stroke;

/**
 * Where another chord begins to sound.
 *
 * @param stroke the stroke of the left hand from which on it sounds
 * @param chord the chord
 */
record ChordChange(Stroke stroke, SoundingChord chord) {

    /** Returns the first stroke of every section and all those at which what sounds changes, in score order. */
    static List<ChordChange> all(Arrangement arrangement) {
        Set<Integer> starts = PlayNeighbors.of(
                        arrangement.tune(),
                        event -> arrangement.step(event.index()).leftHand().stream()
                                .anyMatch(play -> play.button() != null))
                .sectionStarts();
        List<ChordChange> changes = new ArrayList<>();
        SoundingMoment last = null;
        SoundingChord now = null;
        List<SoundingMoment> moments = SoundingMoment.all(arrangement);
        for (int i = 0; i < moments.size(); i++) {
            SoundingMoment moment = moments.get(i);
            SoundingChord before = now;
            now = moment.sounding(last, i + 1 < moments.size() ? moments.get(i + 1) : null, before);
            boolean first = starts.contains(moment.event()) && (last == null || last.event() != moment.event());
            if (first || !now.equals(before)) {
                changes.add(new ChordChange(moment.strokes().get(0), now));
            }
            last = moment;
        }
        return changes;
    }
}
