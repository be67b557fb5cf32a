package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.Accompaniment;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.fit.KeySearch;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.CheckedTune;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.replay.Replay;
import org.bellowscribe.report.RecordWriter;
import org.bellowscribe.report.TuneRecord;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;

/** Marks one tune: reads, decides, replays, writes. Our earlier marks are taken out first. */
final class MarkJob {

    private final MarkSettings settings;
    private final LeftHandChoice leftHandChoice;
    private final Source source;

    MarkJob(MarkSettings settings, LeftHandChoice leftHandChoice, Source source) {
        this.settings = settings;
        this.leftHandChoice = leftHandChoice;
        this.source = source;
    }

    Result run(byte[] bytes) throws DiagnosedException {
        try {
            return mark(ScoreDocument.decode(bytes));
        } catch (DiagnosedException e) {
            return refuse(e.diagnostics());
        }
    }

    private Result mark(ScoreDocument document) throws DiagnosedException {
        String bare = document.withoutMarks().text();
        CheckedTune checked = ScoreReader.readChecked(bare, source.stem(), settings.reading());
        Tune written = checked.tune();
        KeySearch.InKey inKey = inKey(written);
        List<Diagnostic> remarks = new ArrayList<>(written.diagnostics());
        remarks.addAll(checked.schemaRemarks());
        if (inKey.outcome() instanceof Outcome.Unplayable unplayable) {
            remarks.addAll(unplayable.diagnostics());
            return refuse(remarks);
        }
        Outcome.Solved solved = (Outcome.Solved) inKey.outcome();
        remarks.addAll(solved.diagnostics());
        List<Diagnostic> broken = replay(inKey.tune(), solved.solution());
        if (!broken.isEmpty()) {
            remarks.addAll(broken);
            return refuse(remarks);
        }
        return write(document, written, inKey, remarks);
    }

    private KeySearch.InKey inKey(Tune written) {
        KeySearch keys = new KeySearch(
                written,
                (tune, moved) -> Solver.solve(tune, settings.instrument(), wanted(tune), settings.solver(), moved));
        Integer semitones = settings.key().semitones();
        return semitones == null ? keys.nearest() : keys.by(semitones);
    }

    // A left hand that is not written is not played: its air would be missing from the sheet.
    private List<WantedSound> wanted(Tune tune) {
        return settings.marks().contains(MarkSettings.LEFT_HAND)
                ? Accompaniment.plan(tune, settings.instrument(), settings.patterns())
                : List.of();
    }

    // Nothing is written that an independent player could not play.
    private List<Diagnostic> replay(Tune tune, Solution solution) {
        return Replay.check(tune, settings.instrument(), solution).stream()
                .map(violation -> Diagnostic.error(
                        DiagnosticCode.REPLAY,
                        violation.place(),
                        violation.text(),
                        "Please report this with the file: nothing was written."))
                .toList();
    }

    private Result write(ScoreDocument document, Tune written, KeySearch.InKey inKey, List<Diagnostic> remarks)
            throws DiagnosedException {
        Tune tune = inKey.tune();
        Solution solution = ((Outcome.Solved) inKey.outcome()).solution();
        Instrument instrument = settings.instrument();
        boolean keepsNotes = settings.key().keepsNotes();
        int above = keepsNotes ? inKey.semitones() : 0;
        Arrangement arrangement = new Arrangement(tune, instrument, solution, settings.style(), above);
        List<Annotation> marks = Annotators.annotate(arrangement, settings.marks());
        LeftHandOutput leftHand =
                new LeftHandOutput(leftHandChoice, settings.marks(), arrangement, keepsNotes ? written : tune);
        remarks.addAll(leftHand.remarks());
        ScoreDocument sheet = keepsNotes ? document : document.transposed(inKey.semitones());
        ScoreDocument marked = sheet.withMarks(marks, leftHand.added());
        remarks.addAll(marked.lyricWarnings());
        if (settings.record()) {
            record(new TuneRecord.Marked(
                    source.name(), tune, instrument, solution, inKey.semitones(), keepsNotes, remarks));
        }
        leftHand.writeSheet(source, sheet);
        source.write(marked.encode());
        return new Result(
                source, true, TuneSummary.of(tune, instrument, solution).inKey(inKey.semitones(), keepsNotes), remarks);
    }

    private Result refuse(List<Diagnostic> remarks) {
        boolean empty = remarks.stream().anyMatch(remark -> remark.code() == DiagnosticCode.NO_NOTES);
        List<Diagnostic> all = new ArrayList<>(remarks);
        if (settings.record()) {
            try {
                record(new TuneRecord.Unmarked(
                        source.name(), settings.instrument().id(), empty, remarks));
            } catch (DiagnosedException e) {
                all.addAll(e.diagnostics());
            }
        }
        return Result.failed(source, all);
    }

    private void record(TuneRecord tuneRecord) throws DiagnosedException {
        AtomicFile.write(source.recordTarget(), RecordWriter.write(tuneRecord).getBytes(StandardCharsets.UTF_8));
    }
}
