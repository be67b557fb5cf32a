package org.bellowscribe.batch;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.Accompaniment;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.replay.Replay;
import org.bellowscribe.replay.Violation;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;

/** The jobs that can be done on a file. */
public final class Jobs {

    private Jobs() {}

    /** Returns the job that marks a tune. Our earlier marks are taken out first, so marking again changes nothing. */
    public static Job mark(MarkSettings settings) {
        return new SafeJob((source, bytes) -> mark(source, bytes, settings));
    }

    /** Returns the job that takes our marks out again. */
    public static Job strip() {
        return new SafeJob((source, bytes) -> {
            AtomicFile.write(
                    source.target(), ScoreDocument.decode(bytes).withoutMarks().encode());
            return new Result(source, true, null, List.of());
        });
    }

    private static Result mark(Source source, byte[] bytes, MarkSettings settings) throws DiagnosedException {
        ScoreDocument document = ScoreDocument.decode(bytes);
        Tune tune = ScoreReader.read(document.withoutMarks().text(), titleOf(source), settings.reading());
        Instrument instrument = settings.instrument();
        Outcome outcome = Solver.solve(tune, instrument, Accompaniment.plan(tune, instrument), settings.solver());
        List<Diagnostic> remarks = new ArrayList<>(tune.diagnostics());
        if (outcome instanceof Outcome.Unplayable unplayable) {
            remarks.addAll(unplayable.diagnostics());
            return Result.failed(source, remarks);
        }
        Outcome.Solved solved = (Outcome.Solved) outcome;
        remarks.addAll(solved.diagnostics());
        Solution solution = solved.solution();
        List<Violation> violations = Replay.check(tune, instrument, solution);
        if (!violations.isEmpty()) {
            violations.forEach(violation ->
                    remarks.add(Diagnostic.error(DiagnosticCode.REPLAY, violation.place(), violation.text())));
            return Result.failed(source, remarks);
        }
        List<Annotation> marks = Annotators.annotate(tune, instrument, solution, settings.style(), settings.marks());
        ScoreDocument marked = document.withMarks(marks);
        remarks.addAll(marked.lyricWarnings());
        AtomicFile.write(source.target(), marked.encode());
        return new Result(source, true, TuneSummary.of(tune, instrument, solution), remarks);
    }

    private static String titleOf(Source source) {
        String name = String.valueOf(source.file().getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
