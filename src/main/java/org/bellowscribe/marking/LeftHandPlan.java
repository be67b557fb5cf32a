package org.bellowscribe.marking;

import java.util.List;
import org.bellowscribe.accompaniment.Accompaniment;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.accompaniment.WrittenLeftHand;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.musicxml.read.LeftHandReader;
import org.bellowscribe.score.Tune;
import org.jspecify.annotations.Nullable;

/** What the left hand should sound in one tune, in every key in which the tune is tried. */
final class LeftHandPlan {

    private final MarkSettings settings;
    private final WrittenLeftHand.@Nullable Found written;

    private LeftHandPlan(MarkSettings settings, WrittenLeftHand.@Nullable Found written) {
        this.settings = settings;
        this.written = written;
    }

    /**
     * Makes the plan of a tune.
     *
     * @param text the score from which the tune was read
     * @throws DiagnosedException if a part with the left hand is asked for that cannot be read
     */
    static LeftHandPlan of(MarkSettings settings, String text, Tune tune) throws DiagnosedException {
        String part = settings.leftHandPart();
        return new LeftHandPlan(
                settings, part == null ? null : WrittenLeftHand.read(tune, LeftHandReader.read(text, part, tune)));
    }

    /** Returns what there is to say about a written left hand. */
    List<Diagnostic> remarks() {
        return written == null ? List.of() : written.remarks();
    }

    /**
     * Returns what the left hand should sound; nothing if it is not played.
     *
     * @param tune the tune as it sounds
     * @param moved semitones by which it was moved
     */
    List<WantedSound> wanted(Tune tune, int moved) {
        if (!settings.played().leftHand() || settings.instrument().leftHand().isEmpty()) {
            return List.of();
        }
        return written == null
                ? Accompaniment.plan(tune, settings.instrument(), settings.patterns())
                : written.wanted().stream().map(sound -> sound.plus(moved)).toList();
    }
}
