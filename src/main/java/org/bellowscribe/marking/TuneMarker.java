package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.explain.Alternative;
import org.bellowscribe.stage.StageSheets;

/** The last step of marking: prints what was decided onto the sheet. Decides nothing. */
public final class TuneMarker {

    private final MarkSettings settings;
    private final LeftHandChoice leftHand;
    private final StageChoice stages;

    /**
     * Creates a marker.
     *
     * @param leftHand what to write out of the left hand
     * @param stages which stages to write
     */
    public TuneMarker(MarkSettings settings, LeftHandChoice leftHand, StageChoice stages) {
        this.settings = settings;
        this.leftHand = leftHand;
        this.stages = stages;
    }

    /**
     * Marks a tune.
     *
     * @throws DiagnosedException if the marks cannot be written into the score
     */
    public MarkedTune mark(Decision.Decided decided) throws DiagnosedException {
        return mark(decided, SheetLines.NONE);
    }

    /**
     * Marks a tune and prints lines of words about it below its beginning.
     *
     * @param lines the lines
     * @throws DiagnosedException if the marks cannot be written into the score
     */
    public MarkedTune mark(Decision.Decided decided, SheetLines lines) throws DiagnosedException {
        DecidedTune tune = decided.tune();
        Arrangement arrangement = Arrangement.of(tune, settings.style());
        LeftHandOutput output = new LeftHandOutput(leftHand, settings.marks(), arrangement, tune.onSheet());
        ScoreDocument sheet = sheet(decided.read().document(), tune)
                .inFonts(settings.style().fonts(), settings.style().filler());
        List<Annotation> marks = new ArrayList<>(marks(decided, arrangement));
        Integer tempo = settings.reading().quartersPerMinute();
        if (tempo != null) {
            marks.add(new Annotation.Line(firstNote(tune), tempo(tempo, tune.tune())));
        }
        lines.tune().forEach(line -> marks.add(new Annotation.Line(firstNote(tune), line)));
        ScoreDocument score = sheet.withMarks(marks, output.added());
        List<Diagnostic> remarks = new ArrayList<>(decided.remarks());
        remarks.addAll(output.remarks());
        remarks.addAll(LeftOut.remarks(tune.solution(), settings.marks()));
        remarks.addAll(LeftOut.fingers(tune.task().options().pins(), settings.marks()));
        remarks.addAll(score.remarksOnShowing());
        StageOutput staged = StageOutput.of(
                stages, tune, new StageSheets(sheet, settings.style(), settings.marks(), lines.stages()));
        remarks.addAll(staged.remarks());
        List<BesideSheet> beside = new ArrayList<>(staged.sheets());
        beside.addAll(ExerciseOutput.of(stages.exercises(), tune, settings));
        byte[] alone = output.sheet(sheet);
        if (alone != null) {
            beside.add(new BesideSheet(LeftHandChoice.SHEET, alone));
        }
        return new MarkedTune(tune, score, otherWays(decided, sheet), beside, remarks);
    }

    private static String tempo(int quarters, Tune tune) {
        boolean compound = tune.measures().get(0).time().isCompound();
        return compound
                ? "Marked for dotted quarter = %d.".formatted(Math.round(quarters / 1.5))
                : "Marked for quarter = %d.".formatted(quarters);
    }

    private static int firstNote(DecidedTune tune) {
        return tune.tune().events().stream()
                .filter(event -> !event.isGap())
                .findFirst()
                .orElseThrow()
                .firstNoteIndex();
    }

    private static ScoreDocument sheet(ScoreDocument document, DecidedTune tune) throws DiagnosedException {
        return tune.notesKept() ? document : document.transposed(tune.transposedBy());
    }

    private List<ScoreDocument> otherWays(Decision.Decided decided, ScoreDocument sheet) throws DiagnosedException {
        List<ScoreDocument> ways = new ArrayList<>();
        for (Alternative way : decided.tune().steered().alternatives()) {
            DecidedTune other = decided.tune().with(way.solution());
            ways.add(sheet.withMarks(marks(decided, Arrangement.of(other, settings.style()))));
        }
        return ways;
    }

    private List<Annotation> marks(Decision.Decided decided, Arrangement arrangement) throws DiagnosedException {
        return Annotators.annotate(arrangement, settings.marks(), decided.signed());
    }
}
