package org.bellowscribe.marking;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.score.Tune;

/**
 * A score as it was read, with all that is known before anything is decided.
 *
 * @param document the score; marks of an earlier run are known as ours
 * @param tune the tune as it is written
 * @param leftHand what its left hand should sound
 * @param fixes what a teacher has fixed
 * @param remarks what there is to say about the score
 */
public record ReadTune(
        ScoreDocument document, Tune tune, LeftHandPlan leftHand, Fixes fixes, List<Diagnostic> remarks) {

    /** Copies the list. */
    public ReadTune {
        remarks = List.copyOf(remarks);
    }
}
