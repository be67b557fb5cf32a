package org.bellowscribe.replay;

import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/** Every left-hand sound is on its button, and ends with the event in which it begins. */
final class LeftHandCheck {

    private final Instrument instrument;
    private final Findings findings;

    LeftHandCheck(Instrument instrument, Findings findings) {
        this.instrument = instrument;
        this.findings = findings;
    }

    void check(Step step) {
        for (LeftHandPlay play : step.leftHand()) {
            checkSound(step, play);
            checkTime(step, play);
        }
    }

    private void checkSound(Step step, LeftHandPlay play) {
        LeftHandButton button = play.button();
        if (button == null) {
            findings.require(
                    play.sound() == null, step.event(), "sound-on-button", "A left-hand sound comes from no button.");
            return;
        }
        findings.require(
                instrument.leftHand().contains(button)
                        && play.sound() != null
                        && play.sound().equals(button.sound(step.direction())),
                step.event(),
                "sound-on-button",
                "Left-hand button %s does not sound %s on the %s.",
                button.id(),
                play.sound() == null ? "silence" : play.sound().label(),
                step.direction().label());
    }

    private void checkTime(Step step, LeftHandPlay play) {
        Fraction start = play.wanted().offset();
        Fraction end = start.plus(play.wanted().duration());
        boolean within = play.wanted().event() == step.event().index()
                && start.compareTo(Fraction.ZERO) >= 0
                && end.compareTo(step.event().duration()) <= 0;
        findings.require(
                within,
                step.event(),
                "left-hand-ends",
                "A left-hand sound lasts from %s to %s quarters into a note of %s, and could sound through a reversal.",
                start,
                end,
                step.event().duration());
    }
}
