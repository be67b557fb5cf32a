package org.bellowscribe.marking;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;

/**
 * The tool as a step of a data-parallel engine: a plain function from the bytes of a score to those of its marked sheet.
 * It may be sent to other computers (all it holds are names), called by many threads at once, writes no file, prints
 * nothing and ends no process. Copy it and change what you like.
 */
public final class MarkStep implements Function<byte[], MarkStep.Marked>, Serializable {

    private static final long serialVersionUID = 1L;

    private final String instrument;
    private final String manner;
    /** Made where it is used, once for each copy that was sent. */
    private transient volatile Workshop workshop;

    /**
     * Creates a step.
     *
     * @param instrument id of an instrument of the library
     * @param manner id of a manner of the library
     */
    public MarkStep(String instrument, String manner) {
        this.instrument = instrument;
        this.manner = manner;
    }

    /**
     * What came of a score.
     *
     * @param sheet the marked score; empty if it was refused
     * @param remarks what there is to say, one line each
     */
    public record Marked(byte[] sheet, List<String> remarks) implements Serializable {}

    /** What all tunes share; it keeps nothing of any. */
    private record Workshop(TuneReader reader, TuneDecider decider, TuneMarker marker) {}

    @Override
    public Marked apply(byte[] score) {
        List<Diagnostic> remarks = new ArrayList<>();
        try {
            Workshop here = workshop();
            Decision decision = here.decider().decide(here.reader().read(score, "score", null));
            if (decision instanceof Decision.Decided decided) {
                MarkedTune marked = here.marker().mark(decided);
                return new Marked(marked.score().encode(), lines(marked.remarks()));
            }
            remarks.addAll(decision.remarks());
        } catch (DiagnosedException e) {
            remarks.addAll(e.diagnostics());
        }
        return new Marked(new byte[0], lines(remarks));
    }

    // Two threads may make one each at the start; both are alike.
    private Workshop workshop() {
        Workshop here = workshop;
        if (here == null) {
            SolverOptions solver =
                    new SolverOptions(MannerLibrary.of(manner), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
            MarkSettings settings = new MarkSettings(
                    InstrumentLibrary.library().of(instrument).instrument(),
                    StyleLibrary.library().of(StyleLibrary.DEFAULT_ID),
                    Annotators.defaultIds(),
                    Played.ALL,
                    solver,
                    KeyChoice.AS_WRITTEN,
                    ReadingOptions.DEFAULT);
            here = new Workshop(
                    new TuneReader(settings),
                    new TuneDecider(settings),
                    new TuneMarker(settings, LeftHandChoice.NONE, StageChoice.NONE));
            workshop = here;
        }
        return here;
    }

    private static List<String> lines(List<Diagnostic> remarks) {
        return remarks.stream().map(remark -> remark.print("score")).toList();
    }
}
