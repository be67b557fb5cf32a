package org.bellowscribe.marking;

import java.util.List;
import java.util.function.IntPredicate;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.KeyName;
import org.jspecify.annotations.Nullable;

/** Plays a tune in another key. */
public final class KeySearch {

    private static final int OCTAVE = 12;

    private final Tune tune;
    private final Player player;

    /** Solves a tune that was moved by some semitones. */
    @FunctionalInterface
    public interface Player {
        /** Returns what came of it. */
        Outcome play(Tune moved, int semitones);
    }

    /**
     * A tune in a key.
     *
     * @param tune the tune as it sounds
     * @param semitones how much higher than written, lower if negative
     * @param outcome what came of solving it
     */
    public record InKey(Tune tune, int semitones, Outcome outcome) {

        /** Returns the cost; null if it cannot be played. */
        @Nullable
        Integer cost() {
            return outcome instanceof Outcome.Solved solved
                    ? (Integer) solved.solution().cost().total()
                    : null;
        }
    }

    /** Begins with a tune as it is written. */
    public KeySearch(Tune tune, Player player) {
        this.tune = tune;
        this.player = player;
    }

    /** Returns the tune some semitones higher, lower if negative. */
    public InKey by(int semitones) {
        if (!Transposition.isPossible(tune, semitones)) {
            Diagnostic beyond = Diagnostic.error(
                    DiagnosticCode.NO_BUTTON,
                    Place.FILE,
                    "Moved by %d semitones, a note would leave the range from C-1 to G9.".formatted(semitones),
                    "Maybe fewer semitones, or the other way.");
            return new InKey(tune, semitones, new Outcome.Unplayable(List.of(beyond)));
        }
        Tune moved = Transposition.of(tune, semitones);
        return new InKey(moved, semitones, player.play(moved, semitones));
    }

    /**
     * Returns the tune in the nearest key in which it can be played, within an octave; of two equally near the cheaper,
     * else the higher one; the tune as written if there is none.
     */
    public InKey nearest() {
        InKey written = by(0);
        if (written.cost() != null) {
            return written;
        }
        for (int distance = 1; distance <= OCTAVE; distance++) {
            InKey found = cheaper(by(distance), by(-distance));
            if (found.cost() != null) {
                return found;
            }
        }
        return written;
    }

    /**
     * Returns how far away the nearest key is in which the tune can be played, in semitones, within an octave; of two
     * equally near the cheaper, else the higher one; null if there is none.
     *
     * @param possible tells whether the tune can be played so many semitones higher
     */
    @Nullable
    Integer nearest(IntPredicate possible) {
        for (int distance = 0; distance <= OCTAVE; distance++) {
            boolean up = possible.test(distance);
            boolean down = distance > 0 && possible.test(-distance);
            if (up && down) {
                return cheaper(by(distance), by(-distance)).semitones();
            }
            if (up || down) {
                return up ? distance : -distance;
            }
        }
        return null;
    }

    /**
     * Returns the tune in the key of a name, in the nearest octave in which it can be played, else in the nearest; of two
     * equally near the cheaper.
     */
    public InKey in(KeyName name) {
        Diagnostic otherMode = otherMode(tune, name);
        if (otherMode != null) {
            return new InKey(tune, 0, new Outcome.Unplayable(List.of(otherMode)));
        }
        int up = name.tonic().above(tune.measures().get(0).key().tonic());
        if (up == OCTAVE / 2) {
            return cheaper(by(up), by(up - OCTAVE));
        }
        InKey nearest = by(up < OCTAVE / 2 ? up : up - OCTAVE);
        if (nearest.cost() != null) {
            return nearest;
        }
        InKey other = by(up < OCTAVE / 2 ? up - OCTAVE : up);
        return other.cost() == null ? nearest : other;
    }

    /** Returns why a tune is never in the key of a name; null if it can be moved there. */
    public static @Nullable Diagnostic otherMode(Tune tune, KeyName name) {
        Key key = tune.measures().get(0).key();
        return name.isReachedFrom(key)
                ? null
                : Diagnostic.error(
                        DiagnosticCode.BAD_VALUE,
                        Place.FILE,
                        "The tune is in %s: moved to any key it stays %s, so it is never in %s."
                                .formatted(key.name(), key.mode().label(), name.text()),
                        "Maybe %s %s.".formatted(name.tonic(), key.mode().label()));
    }

    private static InKey cheaper(InKey up, InKey down) {
        Integer above = up.cost();
        Integer below = down.cost();
        return above == null || (below != null && below < above) ? down : up;
    }
}
