package org.bellowscribe.marking;

import java.util.List;
import org.bellowscribe.accompaniment.Accompaniment;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.accompaniment.WrittenLeftHand;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.read.LeftHandReader;
import org.bellowscribe.score.Tune;
import org.jspecify.annotations.Nullable;

/** What the left hand should sound in one tune, in every key in which the tune is tried. */
final class LeftHandPlan {

    private final MarkSettings settings;
    private final WrittenLeftHand.@Nullable Found written;

    private final List<Diagnostic> remarks;

    private LeftHandPlan(MarkSettings settings, WrittenLeftHand.@Nullable Found written, List<Diagnostic> remarks) {
        this.settings = settings;
        this.written = written;
        this.remarks = remarks;
    }

    /**
     * Makes the plan of a tune.
     *
     * @param text the score from which the tune was read
     * @throws DiagnosedException if a part with the left hand is asked for that cannot be read
     */
    static LeftHandPlan of(MarkSettings settings, String text, Tune tune) throws DiagnosedException {
        String part = settings.leftHandPart();
        return part == null
                ? new LeftHandPlan(settings, null, idle(settings, tune))
                : of(settings, WrittenLeftHand.read(tune, LeftHandReader.read(text, part, tune)));
    }

    private static LeftHandPlan of(MarkSettings settings, WrittenLeftHand.Found written) {
        return new LeftHandPlan(settings, written, written.remarks());
    }

    private static List<Diagnostic> idle(MarkSettings settings, Tune tune) {
        return settings.patterns().idle(tune.measures()).stream()
                .map(named -> Diagnostic.note(
                        DiagnosticCode.LEFT_HAND,
                        Place.FILE,
                        "The pattern %s is for %s, and the tune has none such."
                                .formatted(named.pattern().id(), named.where())))
                .toList();
    }

    /** Returns what there is to say about a written left hand, or about patterns that no measure has. */
    List<Diagnostic> remarks() {
        return remarks;
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
