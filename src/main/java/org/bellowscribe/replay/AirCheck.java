package org.bellowscribe.replay;

import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Step;

/**
 * The bellows move the right way, by the air of the reeds within the player's loudness and by what the air button can
 * pass. Amounts are whole thousandths of a RU.s.
 */
final class AirCheck {

    private static final double THOUSANDTHS = 1000;
    // Far less than a thousandth: the same sum in another order may differ in its last binary digits.
    private static final double NOTHING = 1e-6;

    private final Tune tune;
    private final Instrument instrument;
    private final Findings findings;

    AirCheck(Tune tune, Instrument instrument, Findings findings) {
        this.tune = tune;
        this.instrument = instrument;
        this.findings = findings;
    }

    void check(Step step) {
        int moved = step.direction().sign() * (step.openingAfter() - step.openingBefore());
        findings.require(
                moved >= 0,
                step.event(),
                "right-way",
                "On the %s the bellows go from %d to %d thousandths.",
                step.direction().label(),
                step.openingBefore(),
                step.openingAfter());
        checkButton(step);
        if (moved >= 0) {
            checkReeds(step, moved - step.airTaken());
        }
    }

    private void checkButton(Step step) {
        Bellows bellows = instrument.bellows();
        double flow = switch (step.air()) {
            case NONE -> 0;
            case LIGHT -> bellows.lightAirFlow();
            case FULL -> bellows.fullAirFlow();
        };
        double most = flow * tune.seconds(step.event()) * THOUSANDTHS;
        findings.require(
                step.airTaken() >= 0 && step.airTaken() <= most + NOTHING,
                step.event(),
                "air-button",
                "The air button (%s) passes %d thousandths where 0 to %.1f can pass.",
                step.air().label(),
                step.airTaken(),
                most);
    }

    // Of an amount so small that no whole thousandth lies within the loudness, the next one up is meant.
    private void checkReeds(Step step, int taken) {
        double nominal = NominalAir.of(tune, instrument, step) * THOUSANDTHS;
        double slack = instrument.air().loudnessSlack();
        int least = (int) Math.ceil(nominal * (1 - slack) - NOTHING);
        int most = Math.max(least, (int) Math.floor(nominal * (1 + slack) + NOTHING));
        findings.require(
                taken >= least && taken <= most,
                step.event(),
                "air-of-reeds",
                "The reeds take %d thousandths where %d to %d are right.",
                taken,
                least,
                most);
    }
}
