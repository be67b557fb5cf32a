package org.bellowscribe.api;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.marking.Decision;
import org.bellowscribe.marking.MarkedTune;
import org.bellowscribe.report.RecordWriter;
import org.bellowscribe.report.TuneRecord;

/** A score of which every note is decided, or which was refused. */
public final class DecidedScore {

    private final Workshop workshop;
    private final String name;
    private final Decision decision;

    DecidedScore(Workshop workshop, String name, Decision decision) {
        this.workshop = workshop;
        this.name = name;
        this.decision = decision;
    }

    /** Returns false if the score was refused. */
    public boolean isPlayable() {
        return decision instanceof Decision.Decided;
    }

    /** Returns what there is to say until now. */
    public List<Remark> remarks() {
        return Remark.of(decision.remarks());
    }

    /** Returns the cost of the decided way to play it, in points of the manner; 0 if it was refused. */
    public long cost() {
        return decision instanceof Decision.Decided decided
                ? tune(decided).solution().cost().total()
                : 0;
    }

    private static DecidedTune tune(Decision.Decided decided) {
        return decided.tune();
    }

    /** Prints the marks. */
    public MarkedScore marked() {
        List<Diagnostic> remarks = new ArrayList<>(decision.remarks());
        if (decision instanceof Decision.Decided decided) {
            try {
                MarkedTune marked = workshop.marker().mark(decided);
                String written = RecordWriter.write(new TuneRecord.Marked(name, marked.tune(), marked.remarks()));
                return new MarkedScore(marked.score().encode(), written, Remark.of(marked.remarks()));
            } catch (DiagnosedException e) {
                remarks.addAll(e.diagnostics());
            }
        }
        boolean empty = remarks.stream().anyMatch(remark -> remark.code() == DiagnosticCode.NO_NOTES);
        String instrument = workshop.settings().instrument().id();
        String written = RecordWriter.write(new TuneRecord.Unmarked(name, instrument, empty, remarks));
        return new MarkedScore(new byte[0], written, Remark.of(remarks));
    }
}
