package org.bellowscribe.solver.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ChordWaysTest {

    private static final Set<BellowsDirection> BOTH = Set.of(BellowsDirection.values());
    private static final Set<BellowsDirection> PUSH = Set.of(BellowsDirection.PUSH);
    private static final Set<BellowsDirection> PULL = Set.of(BellowsDirection.PULL);

    private ChordWays ways;

    @BeforeEach
    void open() throws DiagnosedException {
        ways = new ChordWays(InstrumentLibrary.find("dg-21"));
    }

    private static List<WantedSound> strokes(String root) {
        HarmonyOption harmony = new HarmonyOption(ChordSymbol.major(PitchClass.parse(root)), 0);
        return List.of(new WantedSound(0, Fraction.ZERO, Fraction.of(1, 2), LeftHandKind.BASS, true, List.of(harmony)));
    }

    @Test
    void harmonyOnOneSideAsksForThatSide() {
        assertEquals(PUSH, ways.next(0, strokes("G")));
        assertEquals(PULL, ways.next(0, strokes("A")));
    }

    @Test
    void harmonyOnBothSidesOrNoneAsksForNothing() {
        assertEquals(BOTH, ways.next(0, strokes("D")));
        assertEquals(BOTH, ways.next(0, strokes("F")));
    }

    @Test
    void harmonyHoldsUntilTheBarLine() {
        assertEquals(PUSH, ways.next(0, strokes("G")));
        assertEquals(PUSH, ways.next(0, List.of()));
        assertEquals(BOTH, ways.next(1, List.of()));
    }
}
