package org.bellowscribe.replay;

import java.util.HashSet;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;

/**
 * Every pitch is on its button, and the hand that holds it, in its place, holds all its buttons with a finger each. Where
 * both hands have melody buttons they are strapped, and {@link StrappedHandsCheck} looks at their fingers.
 */
final class RightHandCheck {

    private static final int INDEX_FINGER = 1;
    private static final int LITTLE_FINGER = 4;

    private final Instrument instrument;
    private final Findings findings;
    private final StrappedHandsCheck strapped;
    private final boolean bothHands;

    RightHandCheck(Instrument instrument, Findings findings) {
        this.instrument = instrument;
        this.findings = findings;
        strapped = new StrappedHandsCheck(instrument, findings);
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
            if (!bothHands) {
                checkReach(step, step.buttons().get(i), step.fingers().get(i));
            }
        }
        if (bothHands) {
            strapped.check(step);
            return;
        }
        findings.require(
                new HashSet<>(step.fingers()).size() == pitches,
                step.event(),
                "one-finger-each",
                "Two of the fingers %s are the same.",
                step.fingers());
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

    private void checkReach(Step step, Button button, int finger) {
        // A hand that leans lies one button lower on the inner rows.
        boolean lower = finger == INDEX_FINGER || button.row() > 1;
        int least = step.handOn() + finger - (lower ? 2 : 1);
        int most = step.handOn() + finger - (finger == LITTLE_FINGER ? 0 : 1);
        findings.require(
                finger >= INDEX_FINGER
                        && finger <= LITTLE_FINGER
                        && button.number() >= least
                        && button.number() <= most,
                step.event(),
                "hand-reach",
                "Finger %d does not reach button %s with the hand on button %d.",
                finger,
                button.id(),
                step.handOn());
    }
}
