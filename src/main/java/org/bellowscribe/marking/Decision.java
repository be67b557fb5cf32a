package org.bellowscribe.marking;

import java.util.List;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.Diagnostic;

/** What came of deciding a tune. */
public sealed interface Decision {

    /** Returns what there is to say, from reading on. */
    List<Diagnostic> remarks();

    /**
     * The tune can be played.
     *
     * @param read the score it was read from
     * @param tune all that was decided
     * @param signed which marks bear the sign that keeps them
     * @param remarks notes and warnings
     */
    record Decided(ReadTune read, DecidedTune tune, SignedMarks signed, List<Diagnostic> remarks) implements Decision {
        /** Copies the list. */
        public Decided {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * The tune cannot be played, or not so.
     *
     * @param remarks why, at least one of them an error
     */
    record Refused(List<Diagnostic> remarks) implements Decision {
        /** Copies the list. */
        public Refused {
            remarks = List.copyOf(remarks);
        }
    }
}
