package org.bellowscribe.marking;

import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.musicxml.ScoreDocument;

/**
 * A tune with its sheets, ready to be written.
 *
 * @param tune what was decided
 * @param score the marked score
 * @param otherWays the score marked for other ways to play the tune, in the order of its alternatives
 * @param beside files that go beside the score: a sheet for the left hand alone, stages
 * @param remarks all that there is to say
 */
public record MarkedTune(
        DecidedTune tune,
        ScoreDocument score,
        List<ScoreDocument> otherWays,
        List<BesideSheet> beside,
        List<Diagnostic> remarks) {

    /** Copies the lists. */
    public MarkedTune {
        otherWays = List.copyOf(otherWays);
        beside = List.copyOf(beside);
        remarks = List.copyOf(remarks);
    }
}
