package org.bellowscribe.replay;

import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/**
 * Every left-hand sound is on its button, ends with the event in which it begins, and what sounds together lies under four
 * fingers side by side.
 */
final class LeftHandCheck {

    // From the index finger to the little finger.
    private static final int SPAN = 3;

    private final Instrument instrument;
    private final Findings findings;

    LeftHandCheck(Instrument instrument, Findings findings) {
        this.instrument = instrument;
        this.findings = findings;
    }

    void check(Step step) {
        for (int i = 0; i < step.leftHand().size(); i++) {
            LeftHandPlay play = step.leftHand().get(i);
            checkSound(step, play);
            checkTime(step, play);
            step.leftHand().subList(0, i).stream()
                    .filter(other -> overlap(other, play))
                    .forEach(other -> checkReach(step, other, play));
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

    private static boolean overlap(LeftHandPlay a, LeftHandPlay b) {
        Fraction endOfA = a.wanted().offset().plus(a.wanted().duration());
        Fraction endOfB = b.wanted().offset().plus(b.wanted().duration());
        return a.wanted().offset().compareTo(endOfB) < 0 && b.wanted().offset().compareTo(endOfA) < 0;
    }

    private void checkReach(Step step, LeftHandPlay a, LeftHandPlay b) {
        LeftHandButton one = a.button();
        LeftHandButton other = b.button();
        if (one != null && other != null) {
            findings.require(
                    Math.abs(one.number() - other.number()) <= SPAN,
                    step.event(),
                    "left-hand-reach",
                    "No hand holds left-hand buttons %s and %s together.",
                    one.id(),
                    other.id());
        }
    }
}
