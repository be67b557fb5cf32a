package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.LeftHandPlay;

/**
 * What the left hand could do at one stroke: stay silent, or sound what fits one of the harmonies. No player takes another
 * sound only because it uses more air or less, so what is worse for the ear goes where the direction has better (common
 * practice, no source).
 */
final class StrokeWays {

    private final Instrument instrument;
    private final WantedSound want;
    private final BellowsDirection direction;

    StrokeWays(Instrument instrument, WantedSound want, BellowsDirection direction) {
        this.instrument = instrument;
        this.want = want;
        this.direction = direction;
    }

    /** Returns the ways that are allowed, by harmony, silence first. */
    List<LeftHandPlay> of(Predicate<LeftHandPlay> allowed) {
        List<LeftHandPlay> ways = new ArrayList<>();
        int exactFrom = Integer.MAX_VALUE;
        for (HarmonyOption harmony : want.harmonies()) {
            LeftHandPlay silence = new LeftHandPlay(want, harmony.chord(), null, null);
            if (allowed.test(silence)) {
                ways.add(silence);
            }
            List<LeftHandPlay> sounding = sounding(harmony, allowed);
            boolean exact = has(sounding, LeftHandFit.EXACT);
            if (exact || harmony.misfit() < exactFrom) {
                ways.addAll(sounding);
            }
            exactFrom = exact ? Math.min(exactFrom, harmony.misfit()) : exactFrom;
        }
        return ways;
    }

    // Nothing stands in for the very sound; no bare bass for a minor chord whose relative is there (C over an A bass
    // for A
    // minor); and nothing goes with the melody alone where something goes with the harmony.
    private List<LeftHandPlay> sounding(HarmonyOption harmony, Predicate<LeftHandPlay> allowed) {
        List<LeftHandPlay> plays = new ArrayList<>();
        for (LeftHandButton button : instrument.leftHand()) {
            LeftHandSound sound = button.sound(direction);
            if (sound != null && LeftHandFit.of(want, harmony.chord(), sound) != null) {
                plays.add(new LeftHandPlay(want, harmony.chord(), button, sound));
            }
        }
        plays.removeIf(allowed.negate());
        if (has(plays, LeftHandFit.EXACT)) {
            plays.removeIf(play -> play.fit() != LeftHandFit.EXACT);
        }
        if (want.kind() == LeftHandKind.CHORD && has(plays, LeftHandFit.RELATIVE)) {
            plays.removeIf(play -> play.fit() != LeftHandFit.RELATIVE);
        }
        if (plays.stream().anyMatch(play -> play.fit() != LeftHandFit.WITH_MELODY)) {
            plays.removeIf(play -> play.fit() == LeftHandFit.WITH_MELODY);
        }
        return plays;
    }

    private static boolean has(List<LeftHandPlay> plays, LeftHandFit fit) {
        return plays.stream().anyMatch(play -> play.fit() == fit);
    }
}
