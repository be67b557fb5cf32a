package org.bellowscribe.solver.rule;

import org.bellowscribe.accompaniment.LeftHandFit;

class OtherKindTest extends StandInRuleTest {

    OtherKindTest() {
        super(new OtherKind(), LeftHandFit.OTHER_KIND);
    }
}
