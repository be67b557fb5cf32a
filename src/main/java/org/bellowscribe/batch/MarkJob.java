package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.annotation.edit.LostMarks;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.fit.KeySearch;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.CheckedTune;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.replay.Replay;
import org.bellowscribe.report.AlternativesText;
import org.bellowscribe.report.RecordWriter;
import org.bellowscribe.report.Steered;
import org.bellowscribe.report.SteeringText;
import org.bellowscribe.report.TuneRecord;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.explain.Alternative;

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

    private Result mark(ScoreDocument given) throws DiagnosedException {
        List<Diagnostic> remarks = new ArrayList<>();
        ScoreDocument document = knownAgain(given, remarks);
        Steering steering = settings.steering();
        HandEdits edits = new HandEdits(
                steering.keepsPins() ? document.marks() : List.of(),
                settings.style(),
                settings.marks(),
                steering.keepsEdits());
        Teacher teacher = Teacher.of(steering, source, edits);
        String bare = document.withoutMarks().text();
        CheckedTune checked = ScoreReader.readChecked(bare, source.stem(), settings.reading());
        Tune written = checked.tune();
        LeftHandPlan plan = LeftHandPlan.of(settings, bare, written);
        KeySearch.InKey inKey = inKey(written, teacher, plan);
        remarks.addAll(written.diagnostics());
        remarks.addAll(plan.remarks());
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
        Task task = task(inKey.tune(), inKey.semitones(), plan);
        HandEdits.Kept kept = teacher.kept(task);
        remarks.addAll(kept.remarks());
        Steered steered = teacher.ask(teacher.fix(task), solved.solution());
        return write(new Sheet(document, written, kept.signed()), inKey, remarks, steered);
    }

    private KeySearch.InKey inKey(Tune written, Teacher teacher, LeftHandPlan plan) {
        KeySearch keys = new KeySearch(written, (tune, moved) -> teacher.play(task(tune, moved, plan)));
        Integer semitones = settings.key().semitones();
        return semitones == null ? keys.nearest() : keys.by(semitones);
    }

    private Task task(Tune tune, int moved, LeftHandPlan plan) {
        return new Task(tune, settings.instrument(), plan.wanted(tune, moved), settings.solver(), moved);
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

    // Marks whose names a notation program has dropped get them back.
    private ScoreDocument knownAgain(ScoreDocument document, List<Diagnostic> remarks) throws DiagnosedException {
        if (!document.marks().isEmpty()) {
            return document;
        }
        List<Annotation> texts = document.otherTexts();
        if (!LostMarks.mayBeAmong(texts)) {
            return document;
        }
        String bare = document.withoutMarks().text();
        Tune tune =
                ScoreReader.readChecked(bare, source.stem(), settings.reading()).tune();
        Task task = task(tune, 0, LeftHandPlan.of(settings, bare, tune));
        Map<Annotation, String> lost = LostMarks.among(task, settings.style(), texts);
        if (!lost.isEmpty()) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "Lyrics and words without our names (%d) read as marks for %s: they are taken for ours and written anew."
                            .formatted(lost.size(), settings.instrument().name())));
        }
        return document.adopting(lost);
    }

    /** A score, its tune as it stands there, and which marks bear the sign. */
    private record Sheet(ScoreDocument document, Tune written, SignedMarks signed) {}

    private Result write(Sheet from, KeySearch.InKey inKey, List<Diagnostic> remarks, Steered steered)
            throws DiagnosedException {
        Tune tune = inKey.tune();
        Solution solution = ((Outcome.Solved) inKey.outcome()).solution();
        boolean keepsNotes = settings.key().keepsNotes();
        Arrangement arrangement = arrangement(inKey, solution);
        List<Annotation> marks = Annotators.annotate(arrangement, settings.marks(), from.signed());
        LeftHandOutput leftHand =
                new LeftHandOutput(leftHandChoice, settings.marks(), arrangement, keepsNotes ? from.written() : tune);
        remarks.addAll(leftHand.remarks());
        ScoreDocument sheet = keepsNotes ? from.document() : from.document().transposed(inKey.semitones());
        ScoreDocument marked = sheet.withMarks(marks, leftHand.added());
        remarks.addAll(marked.lyricWarnings());
        if (settings.record()) {
            record(new TuneRecord.Marked(
                    source.name(),
                    tune,
                    settings.instrument(),
                    settings.solver().manner().id(),
                    solution,
                    inKey.semitones(),
                    keepsNotes,
                    steered,
                    remarks));
        }
        if (settings.steering().writes()) {
            leftHand.writeSheet(source, sheet);
            source.write(marked.encode());
        }
        List<String> told = new ArrayList<>(SteeringText.ofPins(tune, steered.pins()));
        told.addAll(SteeringText.ofExplanations(tune, steered.explanations()));
        List<Alternative> sound = sound(steered.alternatives(), tune);
        told.addAll(writeOtherWays(new Sheet(sheet, tune, from.signed()), inKey, solution, sound));
        remarks.addAll(settings.steering().writes() ? OtherWays.remarks(source, sound.size()) : List.of());
        TuneSummary summary =
                TuneSummary.of(tune, settings.instrument(), solution).inKey(inKey.semitones(), keepsNotes);
        return new Result(source, true, summary, remarks, told);
    }

    private Arrangement arrangement(KeySearch.InKey inKey, Solution solution) {
        int above = settings.key().keepsNotes() ? inKey.semitones() : 0;
        return new Arrangement(inKey.tune(), settings.instrument(), solution, settings.style(), above);
    }

    private List<Alternative> sound(List<Alternative> found, Tune tune) {
        return found.stream()
                .filter(way -> replay(tune, way.solution()).isEmpty())
                .toList();
    }

    private List<String> writeOtherWays(Sheet sheet, KeySearch.InKey inKey, Solution first, List<Alternative> sound)
            throws DiagnosedException {
        for (int i = 0; i < sound.size(); i++) {
            List<Annotation> marks =
                    Annotators.annotate(arrangement(inKey, sound.get(i).solution()), settings.marks(), sheet.signed());
            AtomicFile.write(
                    source.alternativeTarget(i + 2),
                    sheet.document().withMarks(marks).encode());
        }
        return settings.steering().alternatives() == 0
                ? List.of()
                : AlternativesText.lines(
                        inKey.tune(),
                        first,
                        sound,
                        i -> String.valueOf(source.alternativeTarget(i).getFileName()));
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
