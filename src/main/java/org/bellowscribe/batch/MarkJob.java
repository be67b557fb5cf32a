package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.guess.Guesses;
import org.bellowscribe.marking.BesideSheet;
import org.bellowscribe.marking.Decision;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.MarkedTune;
import org.bellowscribe.marking.NamedPins;
import org.bellowscribe.marking.ReadTune;
import org.bellowscribe.marking.SheetLines;
import org.bellowscribe.marking.TuneDecider;
import org.bellowscribe.marking.TuneMarker;
import org.bellowscribe.marking.TuneReader;
import org.bellowscribe.report.AlternativesText;
import org.bellowscribe.report.DifficultyText;
import org.bellowscribe.report.GuessText;
import org.bellowscribe.report.RecordWriter;
import org.bellowscribe.report.SteeringText;
import org.bellowscribe.report.TuneRecord;
import org.bellowscribe.report.TuneSummary;

/** Marks one score: hands its bytes to the room where tunes are marked, and writes what comes back. */
final class MarkJob {

    private final MarkSettings settings;
    private final Outputs outputs;
    private final TuneReader reader;
    private final TuneDecider decider;
    private final TuneMarker marker;

    MarkJob(MarkSettings settings, Outputs outputs) {
        this.settings = settings;
        this.outputs = outputs;
        reader = new TuneReader(settings);
        decider = new TuneDecider(settings);
        marker = new TuneMarker(settings, outputs.leftHand(), outputs.stages());
    }

    Result run(Source source, byte[] bytes) {
        return decide(source, bytes, decided -> write(source, marker.mark(decided)));
    }

    /** What is done with a tune once it is decided. */
    @FunctionalInterface
    interface Then {
        Result run(Decision.Decided decided) throws DiagnosedException;
    }

    /** Decides a tune, then does something with it; tells why if it cannot be. */
    Result decide(Source source, byte[] bytes, Then then) {
        String title = "";
        try {
            NamedPins pins = settings.steering().keepsPins() ? PinsBeside.read(outputs.pins(), source) : null;
            ReadTune read = reader.read(bytes, source.stem(), pins);
            title = read.tune().title();
            Decision decision = decider.decide(read);
            return decision instanceof Decision.Decided decided
                    ? then.run(decided)
                    : refuse(source, decision.remarks()).titled(title);
        } catch (DiagnosedException e) {
            return refuse(source, e.diagnostics()).titled(title);
        }
    }

    /** Marks a tune that was decided, with lines of words about it. */
    MarkedTune mark(Decision.Decided decided, SheetLines lines) throws DiagnosedException {
        return marker.mark(decided, lines);
    }

    /** Writes a tune that was marked. */
    Result write(Source source, MarkedTune marked) throws DiagnosedException {
        List<Diagnostic> remarks = new ArrayList<>(marked.remarks());
        if (outputs.score()) {
            OtherWays.requireOurs(source, marked.otherWays().size());
            remarks.addAll(OtherWays.remarks(source, marked.otherWays().size()));
            for (int i = 0; i < marked.otherWays().size(); i++) {
                source.files()
                        .write(
                                source.alternativeTarget(i + 2),
                                marked.otherWays().get(i).encode());
            }
            for (BesideSheet sheet : marked.beside()) {
                source.files().write(source.beside(sheet.ending()), sheet.bytes());
            }
            for (Beside beside : outputs.beside()) {
                source.files().write(source.beside(beside.ending()), beside.of(marked.tune()));
            }
            source.write(marked.score().encode());
        }
        show(source, marked, remarks);
        // The record comes last: it stands only beside what was written.
        if (outputs.record()) {
            record(source, new TuneRecord.Marked(source.name(), marked.tune(), remarks));
        }
        return new Result(source, true, TuneSummary.of(marked.tune()), remarks, told(source, marked.tune()));
    }

    private void show(Source source, MarkedTune marked, List<Diagnostic> remarks) throws DiagnosedException {
        ReportFolder report = outputs.report();
        if (report != null) {
            report.write(
                    source,
                    new ReportFolder.Shown(
                            marked,
                            remarks,
                            settings.style(),
                            outputs.grades().grading(),
                            outputs.stages().exercises().times()));
        }
    }

    private List<String> told(Source source, DecidedTune tune) {
        Steered steered = tune.steered();
        List<String> told = new ArrayList<>();
        if (outputs.grades().told()) {
            told.addAll(DifficultyText.lines(
                    tune.onSheet(), Difficulty.of(tune, outputs.grades().grading())));
        }
        told.addAll(SteeringText.ofPins(tune.tune(), steered.pins()));
        told.addAll(SteeringText.ofExplanations(tune));
        if (settings.steering().alternatives() > 0) {
            told.addAll(AlternativesText.lines(
                    tune.tune(),
                    tune.solution(),
                    steered.alternatives(),
                    i -> String.valueOf(source.alternativeTarget(i).getFileName())));
        }
        if (outputs.stages().fades()) {
            told.add(GuessText.line(Guesses.of(tune)));
        }
        return told;
    }

    private Result refuse(Source source, List<Diagnostic> remarks) {
        boolean empty = remarks.stream().anyMatch(remark -> remark.code() == DiagnosticCode.NO_NOTES);
        List<Diagnostic> all = new ArrayList<>(remarks);
        if (outputs.record()) {
            try {
                record(
                        source,
                        new TuneRecord.Unmarked(
                                source.name(), settings.instrument().id(), empty, remarks));
            } catch (DiagnosedException e) {
                all.addAll(e.diagnostics());
            }
        }
        return Result.failed(source, all);
    }

    private void record(Source source, TuneRecord tuneRecord) throws DiagnosedException {
        String text = RecordWriter.write(tuneRecord, outputs.grades().grading());
        source.files().write(source.recordTarget(), text.getBytes(StandardCharsets.UTF_8));
    }
}
