package org.bellowscribe.solver.rule;

import org.bellowscribe.accompaniment.LeftHandFit;

class RelativeChordTest extends StandInRuleTest {

    RelativeChordTest() {
        super(new RelativeChord(), LeftHandFit.RELATIVE);
    }
}
