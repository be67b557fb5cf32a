package org.bellowscribe.solver.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bellowscribe.accompaniment.ChordTone;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class StrokeWaysTest {

    private static final HarmonyOption A_MINOR = new HarmonyOption(ChordSymbol.minor(PitchClass.parse("A")), 0);

    private static HarmonyOption major(String root, int misfit) {
        return new HarmonyOption(ChordSymbol.major(PitchClass.parse(root)), misfit);
    }

    // What the default instrument could sound, each once.
    private static String ways(LeftHandKind kind, BellowsDirection direction, HarmonyOption... harmonies)
            throws DiagnosedException {
        WantedSound wanted = new WantedSound(
                0, Fraction.ZERO, Fraction.QUARTER, kind, ChordTone.ROOT, false, List.of(harmonies), Set.of());
        return new StrokeWays(InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID), wanted, direction)
                .of(play -> true).stream()
                        .map(play -> play.sound() == null ? "-" : play.sound().label())
                        .distinct()
                        .collect(Collectors.joining(" "));
    }

    @Test
    void aMinorIsCAndNeverABareBass() throws DiagnosedException {
        assertEquals("- c", ways(LeftHandKind.CHORD, BellowsDirection.PUSH, A_MINOR));
        assertEquals("- A", ways(LeftHandKind.BASS, BellowsDirection.PULL, A_MINOR));
    }

    @Test
    void noHarmonyThatSuitsWorseIsLeftForItsStandIns() throws DiagnosedException {
        assertEquals("- a", ways(LeftHandKind.CHORD, BellowsDirection.PULL, major("A", 0), major("G", 2)));
        assertEquals("- d", ways(LeftHandKind.CHORD, BellowsDirection.PUSH, major("A", 0), major("D", 2)));
    }

    @Test
    void harmonyThatSuitsWorseMaySoundItself() throws DiagnosedException {
        assertEquals("- a d", ways(LeftHandKind.CHORD, BellowsDirection.PULL, major("A", 0), major("D", 2)));
    }
}
