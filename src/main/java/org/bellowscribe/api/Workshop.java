package org.bellowscribe.api;

import java.util.List;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;
import org.bellowscribe.marking.KeyChoice;
import org.bellowscribe.marking.LeftHandChoice;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.marking.StageChoice;
import org.bellowscribe.marking.TuneDecider;
import org.bellowscribe.marking.TuneMarker;
import org.bellowscribe.marking.TuneReader;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;

/** What all scores share; it keeps nothing of any. */
record Workshop(MarkSettings settings, TuneReader reader, TuneDecider decider, TuneMarker marker) {

    /**
     * Makes it.
     *
     * @param manner id or file; empty for the manner that is usual on the instrument
     * @param marks ids of the marks to print; none for those that are usual
     * @throws IllegalArgumentException if something is not known, or a file is wrong
     */
    static Workshop of(String instrument, String manner, String style, List<String> marks) {
        try {
            LibraryEntry entry = InstrumentLibrary.entry(instrument);
            String usual = entry.manner() == null ? MannerLibrary.DEFAULT_ID : entry.manner();
            Manner played = MannerLibrary.find(manner.isEmpty() ? usual : manner);
            List<String> printed = marks.isEmpty() ? Annotators.defaultIds() : marks;
            Annotators.find(printed);
            MarkSettings settings = new MarkSettings(
                    entry.instrument(),
                    StyleLibrary.find(style),
                    printed,
                    Played.ALL,
                    new SolverOptions(played, Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT),
                    KeyChoice.AS_WRITTEN,
                    ReadingOptions.DEFAULT);
            return new Workshop(
                    settings,
                    new TuneReader(settings),
                    new TuneDecider(settings),
                    new TuneMarker(settings, LeftHandChoice.NONE, StageChoice.NONE));
        } catch (DiagnosedException e) {
            throw new IllegalArgumentException(
                    String.join(
                            "\n", e.diagnostics().stream().map(Diagnostic::text).toList()),
                    e);
        }
    }
}
