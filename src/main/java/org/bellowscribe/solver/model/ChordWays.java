package org.bellowscribe.solver.model;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.theory.ChordSymbol;
import org.jspecify.annotations.Nullable;

/**
 * In which directions the left hand has the harmony: that of an event's first stroke, and after its last one until the next
 * stroke or bar line. Of several harmonies that may be meant the first counts.
 */
final class ChordWays {

    private static final Set<BellowsDirection> BOTH = Set.of(BellowsDirection.values());
    private static final Set<LeftHandFit> IN_HARMONY =
            EnumSet.of(LeftHandFit.EXACT, LeftHandFit.PLAIN_ROOT, LeftHandFit.OTHER_KIND);

    private final Instrument instrument;
    private int measure = -1;
    private Set<BellowsDirection> since = BOTH;

    ChordWays(Instrument instrument) {
        this.instrument = instrument;
    }

    /**
     * Returns the directions for the next event of the tune; both where none has the harmony, or no stroke has fallen in the
     * measure.
     */
    Set<BellowsDirection> next(int inMeasure, List<WantedSound> strokes) {
        if (inMeasure != measure) {
            measure = inMeasure;
            since = BOTH;
        }
        if (strokes.isEmpty()) {
            return since;
        }
        since = ways(strokes.get(strokes.size() - 1));
        return ways(strokes.get(0));
    }

    private Set<BellowsDirection> ways(WantedSound stroke) {
        ChordSymbol chord = stroke.harmonies().get(0).chord();
        Set<BellowsDirection> ways = EnumSet.noneOf(BellowsDirection.class);
        for (BellowsDirection direction : BellowsDirection.values()) {
            if (instrument.leftHand().stream().anyMatch(button -> sounds(button, direction, stroke, chord))) {
                ways.add(direction);
            }
        }
        return ways.isEmpty() ? BOTH : ways;
    }

    private static boolean sounds(
            LeftHandButton button, BellowsDirection direction, WantedSound stroke, ChordSymbol chord) {
        @Nullable LeftHandSound sound = button.sound(direction);
        return sound != null && IN_HARMONY.contains(LeftHandFit.of(stroke, chord, sound));
    }
}
