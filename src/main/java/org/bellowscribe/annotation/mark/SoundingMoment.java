package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.theory.ChordSymbol;
import org.jspecify.annotations.Nullable;

/**
 * All that the left hand strikes at one moment.
 *
 * @param strokes the strokes, one at least
 */
record SoundingMoment(List<Stroke> strokes) {

    /** The fifth of a chord, in semitones above its root. */
    private static final int FIFTH = 7;

    /** Returns all moments in score order. */
    static List<SoundingMoment> all(Arrangement arrangement) {
        List<SoundingMoment> moments = new ArrayList<>();
        for (Stroke stroke : Stroke.of(arrangement.solution())) {
            if (moments.isEmpty() || !moments.get(moments.size() - 1).isAt(stroke)) {
                moments.add(new SoundingMoment(new ArrayList<>()));
            }
            moments.get(moments.size() - 1).strokes.add(stroke);
        }
        return moments;
    }

    private boolean isAt(Stroke stroke) {
        return event() == stroke.event() && strokes.get(0).offset().equals(stroke.offset());
    }

    /** Returns the 0-based index of the event during which it falls. */
    int event() {
        return strokes.get(0).event();
    }

    /**
     * Returns what sounds from here on.
     *
     * @param last the moment before
     * @param next the moment after
     * @param before what sounded until now
     */
    SoundingChord sounding(
            @Nullable SoundingMoment last, @Nullable SoundingMoment next, @Nullable SoundingChord before) {
        LeftHandSound chord = sound(LeftHandKind.CHORD).orElse(null);
        LeftHandSound bass = sound(LeftHandKind.BASS).orElse(null);
        if (chord == null) {
            return bassAlone(last, next, before);
        }
        boolean known = before != null && before.isOn(chord.root(), chord.third());
        if (bass == null) {
            boolean standsIn = last != null
                    && last.harmony().equals(harmony())
                    && last.sound(LeftHandKind.CHORD).map(chord::equals).orElse(true);
            return before != null && (known || standsIn) ? before : plain(chord);
        }
        boolean alternates = bass.root().equals(chord.root().plus(FIFTH));
        return before != null && known && alternates
                ? before
                : new SoundingChord(chord.root(), chord.third(), bass.root());
    }

    // The chord behind it tells whether the harmony has a third.
    private SoundingChord bassAlone(
            @Nullable SoundingMoment last, @Nullable SoundingMoment next, @Nullable SoundingChord before) {
        ChordSymbol meant = harmony();
        if (before != null
                && last != null
                && last.harmony().equals(meant)
                && before.root().equals(meant.root())) {
            return before;
        }
        LeftHandSound chord = next == null || !next.harmony().equals(meant)
                ? null
                : next.sound(LeftHandKind.CHORD)
                        .filter(each -> each.root().equals(meant.root()))
                        .orElse(null);
        Third third = chord != null ? chord.third() : meant.isMinor() ? Third.MINOR : Third.MAJOR;
        return before != null && before.isOn(meant.root(), third)
                ? before
                : new SoundingChord(meant.root(), third, meant.root());
    }

    private static SoundingChord plain(LeftHandSound chord) {
        return new SoundingChord(chord.root(), chord.third(), chord.root());
    }

    private ChordSymbol harmony() {
        Stroke stroke = strokes.get(0);
        return stroke.step().leftHand().get(stroke.play()).harmony();
    }

    private Optional<LeftHandSound> sound(LeftHandKind kind) {
        return strokes.stream()
                .map(Stroke::sound)
                .filter(sound -> sound.kind() == kind)
                .findFirst();
    }
}
