package org.bellowscribe.fit;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Cost;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.KeyMove;
import org.jspecify.annotations.Nullable;

/**
 * A tune tried on an instrument in a key.
 *
 * @param instrument the instrument
 * @param semitones how much higher the tune is played, lower if negative
 * @param estimate points at a glance, which only order the trials that are not solved; 0 if a note is missing
 * @param cost what the marks cost; null if it was not solved or cannot be played
 * @param obstacle the first reason why it cannot be played; null if there is none so far
 */
public record Trial(
        Instrument instrument,
        int semitones,
        int estimate,
        @Nullable Cost cost,
        @Nullable Diagnostic obstacle) {

    /** How a trial ended, the best first. */
    public enum Verdict {
        /** It can be played; the cost is known. */
        FITS("fits"),
        /** All notes are there; it was not solved. */
        NOTES_FIT("notes fit"),
        /** It cannot be played. */
        FAILS("fails");

        private final String label;

        Verdict(String label) {
            this.label = label;
        }

        /** Returns the word for people. */
        public String label() {
            return label;
        }
    }

    /** Returns the key in which a tune that is written in another sounds. */
    public Key soundingKey(Tune tune) {
        Measure first = tune.measures().get(0);
        List<Integer> signatures =
                tune.measures().stream().map(measure -> measure.key().fifths()).toList();
        return new Key(
                KeyMove.of(signatures, semitones).signature(first.key().fifths()),
                first.key().mode());
    }

    /** Returns how it ended. */
    public Verdict verdict() {
        if (obstacle != null) {
            return Verdict.FAILS;
        }
        return cost == null ? Verdict.NOTES_FIT : Verdict.FITS;
    }

    /** Returns the points that order it among those of the same verdict. */
    int points() {
        return cost == null ? estimate : cost.total();
    }
}
