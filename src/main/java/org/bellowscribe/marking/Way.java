package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.solver.explain.Alternative;

/**
 * One of several ways in which tunes are to be played.
 *
 * @param name what people call it
 * @param settings how to decide; what is to be fixed and asked is set by this
 * @param kind what of it is wanted
 */
public record Way(String name, MarkSettings settings, Kind kind) {

    /** What is wanted. */
    public enum Kind {
        /** The cheapest marks, whatever stands on the sheet. */
        CHEAPEST,
        /** The cheapest of the other ways. */
        OTHER,
        /** The marks that somebody made or changed on the sheet, and where there are none the cheapest. */
        BY_HAND
    }

    /** A tune played this way, with its sheet. */
    public record Played(DecidedTune tune, ScoreDocument score, List<Diagnostic> remarks) {

        /** Copies the list. */
        public Played {
            remarks = List.copyOf(remarks);
        }
    }

    /** Sets what is fixed and asked. */
    public Way {
        boolean byHand = kind == Kind.BY_HAND;
        settings = settings.with(new Steering(byHand, byHand, null, kind == Kind.OTHER ? 1 : 0));
    }

    /**
     * Plays a tune this way.
     *
     * @param bytes the score's file
     * @param title what to call the tune if it has no title
     * @throws DiagnosedException if it cannot be played so
     */
    public Played play(byte[] bytes, String title) throws DiagnosedException {
        Decision decision = new TuneDecider(settings).decide(new TuneReader(settings).read(bytes, title, null));
        if (!(decision instanceof Decision.Decided decided)) {
            throw new DiagnosedException(decision.remarks());
        }
        MarkedTune marked = new TuneMarker(settings, LeftHandChoice.NONE, StageChoice.NONE).mark(decided);
        if (kind != Kind.OTHER) {
            return new Played(marked.tune(), marked.score(), marked.remarks());
        }
        List<Alternative> others = marked.tune().steered().alternatives();
        if (others.isEmpty()) {
            List<Diagnostic> remarks = new ArrayList<>(marked.remarks());
            remarks.add(Diagnostic.error(
                    DiagnosticCode.NO_OTHER_WAY,
                    Place.FILE,
                    "No other way to play it was found that is clearly different and not twice as dear."));
            throw new DiagnosedException(remarks);
        }
        DecidedTune other = marked.tune().with(others.get(0).solution());
        return new Played(other, marked.otherWays().get(0), marked.remarks());
    }
}
