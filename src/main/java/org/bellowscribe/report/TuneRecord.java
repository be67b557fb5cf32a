package org.bellowscribe.report;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;

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
     * @param tune the tune as it was solved
     * @param notesKept true if the sheet keeps the notes that it had before that
     * @param instrument the instrument
     * @param manner id of the manner of playing
     * @param solution how it is played; one step for each event of the tune
     * @param transposedBy semitones by which the tune was moved before it was solved
     * @param steered what a teacher fixed and asked
     * @param diagnostics notes and warnings
     */
    record Marked(
            String file,
            Tune tune,
            Instrument instrument,
            String manner,
            Solution solution,
            int transposedBy,
            boolean notesKept,
            Steered steered,
            List<Diagnostic> diagnostics)
            implements TuneRecord {
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
