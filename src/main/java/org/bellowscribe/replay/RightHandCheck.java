package org.bellowscribe.replay;

import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;

/**
 * Every pitch is on its button, and each has a finger; what the fingers reach is looked at by {@link MovingHandCheck}, or
 * by {@link StrappedHandsCheck} where both hands have melody buttons.
 */
final class RightHandCheck {

    private final Instrument instrument;
    private final Findings findings;
    private final StrappedHandsCheck strapped;
    private final MovingHandCheck moving;
    private final boolean bothHands;

    RightHandCheck(Instrument instrument, Findings findings) {
        this.instrument = instrument;
        this.findings = findings;
        strapped = new StrappedHandsCheck(instrument, findings);
        moving = new MovingHandCheck(findings);
        bothHands = instrument.buttons().stream().map(Button::hand).distinct().count() > 1;
    }

    void check(Step step) {
        int pitches = step.event().pitches().size();
        boolean paired = step.buttons().size() == pitches && step.fingers().size() == pitches;
        findings.require(
                paired,
                step.event(),
                "button-each",
                "%d pitches have %d buttons and %d fingers.",
                pitches,
                step.buttons().size(),
                step.fingers().size());
        findings.require(step.handOn() >= 1, step.event(), "hand-reach", "The hand is on button %d.", step.handOn());
        if (!paired) {
            return;
        }
        for (int i = 0; i < pitches; i++) {
            checkButton(step, step.event().pitches().get(i), step.buttons().get(i));
        }
        if (bothHands) {
            strapped.check(step);
        } else {
            moving.check(step);
        }
    }

    private void checkButton(Step step, Pitch pitch, Button button) {
        findings.require(
                instrument.buttons().contains(button) && pitch.equals(button.pitch(step.direction())),
                step.event(),
                "pitch-on-button",
                "Button %s does not sound %s on the %s.",
                button.id(),
                pitch,
                step.direction().label());
    }
}
