package org.bellowscribe.report;

import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.Diagnostic;

/** What became of one tune. */
public sealed interface TuneRecord {

    /** Returns the name of the score's file, without folders. */
    String file();

    /** Returns all remarks about the tune, in the order in which they were made. */
    List<Diagnostic> diagnostics();

    /**
     * A tune that was marked.
     *
     * @param file name of the score's file, without folders
     * @param tune all that was decided
     * @param diagnostics notes and warnings
     */
    record Marked(String file, DecidedTune tune, List<Diagnostic> diagnostics) implements TuneRecord {
        /** Copies the list. */
        public Marked {
            diagnostics = List.copyOf(diagnostics);
        }
    }

    /**
     * A tune that was not marked.
     *
     * @param file name of the score's file, without folders
     * @param instrument id of the instrument
     * @param empty true if the score holds nothing to mark, false if it was refused
     * @param diagnostics why
     */
    record Unmarked(String file, String instrument, boolean empty, List<Diagnostic> diagnostics) implements TuneRecord {
        /** Copies the list. */
        public Unmarked {
            diagnostics = List.copyOf(diagnostics);
        }
    }
}
