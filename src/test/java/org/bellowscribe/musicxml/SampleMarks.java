package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;

/** Marks of every kind, spread over a score. */
final class SampleMarks {

    private SampleMarks() {}

    /** Returns two syllables on every note, words before every third, a chord symbol at every fourth, a finger on every fifth. */
    static List<Annotation> on(ScoreDocument score) {
        List<Annotation> marks = new ArrayList<>();
        for (int note = score.noteCount() - 1; note >= 0; note--) {
            marks.add(new Annotation.Syllable(note, 1, "chords", "·"));
            marks.add(new Annotation.Syllable(note, 0, "buttons", "‹" + note % 11 + "›"));
            if (note % 3 == 0) {
                marks.add(new Annotation.Words(note, note % 2 == 0, "push & <air>"));
            }
            if (note % 4 == 0) {
                PitchClass root = new PitchClass(note % 12);
                marks.add(new Annotation.Symbol(note, Fraction.of(note % 3, 2), root, Third.MINOR, root.plus(7)));
            }
            if (note % 5 == 0) {
                marks.add(new Annotation.Finger(note, note % 4 + 1));
            }
        }
        return marks;
    }
}
