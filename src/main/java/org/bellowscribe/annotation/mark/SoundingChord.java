package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/**
 * What a bass and the chords after it sound together. A bass that no chord follows stands for the harmony that is meant
 * there; the fifth under a chord that sounded just before changes nothing (alternating bass: common practice, no source).
 *
 * @param root root of the chord
 * @param third its third; {@code NONE} where none sounds
 * @param bass the bass; the root, unless another bass is under it
 */
record SoundingChord(PitchClass root, Third third, PitchClass bass) {

    private static final int FIFTH = 7;

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
        SoundingChord now = null;
        List<Stroke> strokes = Stroke.of(arrangement.solution());
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            SoundingChord before = now;
            now = sounding(stroke, i + 1 < strokes.size() ? strokes.get(i + 1) : null, now);
            boolean first = starts.contains(stroke.event())
                    && (i == 0 || strokes.get(i - 1).event() != stroke.event());
            if (first || !now.equals(before)) {
                changes.add(new Change(stroke, now));
            }
        }
        return changes;
    }

    private static SoundingChord sounding(Stroke stroke, @Nullable Stroke next, @Nullable SoundingChord before) {
        LeftHandSound sound = stroke.sound();
        if (sound.kind() == LeftHandKind.CHORD) {
            if (before != null && before.root.equals(sound.root()) && before.third == sound.third()) {
                return before;
            }
            return new SoundingChord(sound.root(), sound.third(), sound.root());
        }
        SoundingChord above = next != null && next.sound().kind() == LeftHandKind.CHORD
                ? new SoundingChord(next.sound().root(), next.sound().third(), sound.root())
                : meant(stroke);
        // The fifth of the chord that has just sounded.
        if (before != null
                && before.root.equals(above.root)
                && before.third == above.third
                && sound.root().equals(above.root.plus(FIFTH))) {
            return before;
        }
        return above;
    }

    private static SoundingChord meant(Stroke stroke) {
        ChordSymbol harmony = stroke.step().leftHand().get(stroke.play()).harmony();
        Third third = harmony.isMinor() ? Third.MINOR : Third.MAJOR;
        return new SoundingChord(harmony.root(), third, stroke.sound().root());
    }
}
