package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.edit.LostMarks;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.CheckedTune;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/** The first step of marking: reads a score, without our earlier marks, and what a teacher has fixed in it. */
public final class TuneReader {

    private final MarkSettings settings;

    /** Creates a reader. */
    public TuneReader(MarkSettings settings) {
        this.settings = settings;
    }

    /**
     * Reads a score.
     *
     * @param bytes the score's file
     * @param name what to call the tune if it has no title
     * @param pins the file of pins; null for none
     * @throws DiagnosedException if it cannot be read
     */
    public ReadTune read(byte[] bytes, String name, @Nullable NamedPins pins) throws DiagnosedException {
        List<Diagnostic> remarks = new ArrayList<>();
        ScoreDocument document = knownAgain(ScoreDocument.decode(bytes), name, remarks);
        String bare = document.withoutMarks().text();
        CheckedTune checked = ScoreReader.readChecked(bare, name, settings.reading());
        LeftHandPlan plan = LeftHandPlan.of(settings, bare, checked.tune());
        remarks.addAll(checked.tune().diagnostics());
        remarks.addAll(plan.remarks());
        remarks.addAll(checked.schemaRemarks());
        HandEdits edits = new HandEdits(settings.steering().keepsPins() ? document.marks() : List.of(), settings);
        return new ReadTune(document, checked.tune(), plan, new Fixes(pins, edits), remarks);
    }

    // Marks whose names a notation program has dropped get them back.
    private ScoreDocument knownAgain(ScoreDocument document, String name, List<Diagnostic> remarks)
            throws DiagnosedException {
        if (!document.marks().isEmpty()) {
            return document;
        }
        List<Annotation> texts = document.otherTexts();
        if (!LostMarks.mayBeAmong(texts)) {
            return document;
        }
        String bare = document.withoutMarks().text();
        Tune tune = ScoreReader.readChecked(bare, name, settings.reading()).tune();
        Task task = settings.task(tune, 0, LeftHandPlan.of(settings, bare, tune));
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
}
