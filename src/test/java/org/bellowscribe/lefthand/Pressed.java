package org.bellowscribe.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Costs;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;

/** Writes down which left-hand buttons are pressed in a small tune. */
final class Pressed {

    private static final LeftHandSound SOUND = LeftHandSound.bass(PitchClass.parse("C"));

    private Pressed() {}

    /**
     * Returns a solution.
     *
     * @param buttons for each event of the tune a button such as {@code 1.4}, two with {@code +} between, {@code -} for
     *     none; {@code !} behind presses the air button
     */
    static Solution of(Tune tune, String buttons) {
        List<Step> steps = new ArrayList<>();
        String[] words = buttons.split(" ");
        for (Event event : tune.events()) {
            String word = words[event.index()];
            List<LeftHandPlay> plays = new ArrayList<>();
            for (String id : word.replace("!", "").split("\\+")) {
                if (!id.equals("-")) {
                    plays.add(play(event, id));
                }
            }
            AirUse air = word.endsWith("!") ? AirUse.FULL : AirUse.NONE;
            steps.add(new Step(event, BellowsDirection.PUSH, List.of(), List.of(), 1, false, plays, air, 0, 0, 0));
        }
        return new Solution(steps, true, Costs.of(0, 0, new TreeMap<>()), List.of());
    }

    private static LeftHandPlay play(Event event, String id) {
        LeftHandButton button = new LeftHandButton(id.charAt(0) - '0', Integer.parseInt(id.substring(2)), SOUND, SOUND);
        ChordSymbol harmony = ChordSymbol.major(SOUND.root());
        WantedSound wanted = new WantedSound(
                event.index(),
                Fraction.ZERO,
                event.duration(),
                SOUND.kind(),
                true,
                List.of(new HarmonyOption(harmony, 0)));
        return new LeftHandPlay(wanted, harmony, button, SOUND);
    }
}
