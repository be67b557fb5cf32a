package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.ModeGuess;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;

/** The key of each measure, as it sounds. A mode that the score does not name is guessed from the last note. */
final class KeyFinder {

    private static final KeySignature NO_SIGNATURE = new KeySignature(0, null);

    private final List<MeasureContent> measures;
    private final PitchClass last;

    /**
     * Creates a finder.
     *
     * @param last last note of the tune as it is played
     */
    KeyFinder(List<MeasureContent> measures, PitchClass last) {
        this.measures = measures;
        this.last = last;
    }

    /** Returns one key for each measure; a score without key signatures is read in the signature without accidentals. */
    List<Key> keys() {
        List<Key> keys = new ArrayList<>();
        Key current = key(NO_SIGNATURE);
        for (MeasureContent measure : measures) {
            KeySignature own = measure.key();
            current = own == null ? current : key(own);
            keys.add(current);
        }
        return keys;
    }

    private Key key(KeySignature signature) {
        Mode mode = signature.mode();
        return new Key(signature.fifths(), mode == null ? ModeGuess.of(signature.fifths(), last) : mode);
    }

    /** Remarks what was guessed, if anything: it matters only where the harmonies follow from the key. */
    void remark(List<Diagnostic> remarks) {
        boolean signature = measures.stream().anyMatch(measure -> measure.key() != null);
        boolean mode = measures.stream().allMatch(measure -> {
            KeySignature key = measure.key();
            return key == null || key.mode() != null;
        });
        if (signature && mode) {
            return;
        }
        Key first = keys().get(0);
        String name = first.tonic() + " " + first.mode().name().toLowerCase(java.util.Locale.ROOT);
        remarks.add(Diagnostic.note(
                DiagnosticCode.ASSUMED,
                Place.FILE,
                signature
                        ? "The key signature names no mode; by the last note it is read as %s.".formatted(name)
                        : "The score has no key signature; by the last note it is read as %s.".formatted(name)));
    }
}
