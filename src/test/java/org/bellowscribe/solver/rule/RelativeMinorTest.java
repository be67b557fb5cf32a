package org.bellowscribe.solver.rule;

import org.bellowscribe.accompaniment.LeftHandFit;

class RelativeMinorTest extends StandInRuleTest {

    RelativeMinorTest() {
        super(new RelativeMinor(), LeftHandFit.RELATIVE_MINOR);
    }
}
