package org.bellowscribe.solver.rule;

import org.bellowscribe.accompaniment.LeftHandFit;

class FifthInBassTest extends StandInRuleTest {

    FifthInBassTest() {
        super(new FifthInBass(), LeftHandFit.FIFTH);
    }
}
