package org.bellowscribe.solver.rule;

import org.bellowscribe.accompaniment.LeftHandFit;

class WithMelodyTest extends StandInRuleTest {

    WithMelodyTest() {
        super(new WithMelody(), LeftHandFit.WITH_MELODY);
    }
}
