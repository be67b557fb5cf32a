package org.bellowscribe.solver.rule;

import org.bellowscribe.accompaniment.LeftHandFit;

class LeftHandSilentTest extends StandInRuleTest {

    LeftHandSilentTest() {
        super(new LeftHandSilent(), LeftHandFit.SILENT);
    }
}
