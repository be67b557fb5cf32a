package org.bellowscribe.accompaniment;

import java.util.List;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;

/** What the left hand should sound where nobody has chosen patterns. */
public final class UsualPlan {

    private UsualPlan() {}

    /** Returns the wanted sounds in score order. */
    public static List<WantedSound> of(Tune tune, Instrument instrument) {
        return Accompaniment.plan(tune, instrument, PatternLibrary.usual());
    }
}
