package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.exercise.ExerciseChoice;
import org.bellowscribe.exercise.ExerciseSheet;
import org.bellowscribe.musicxml.ScoreDocument;

/** The exercises of a tune, as far as they were asked for. */
final class ExerciseOutput {

    private ExerciseOutput() {}

    /** Returns the files; none if there is nothing to practice by itself. */
    static List<BesideSheet> of(ExerciseChoice choice, DecidedTune tune, MarkSettings settings)
            throws DiagnosedException {
        List<ScoreDocument> scores = ExerciseSheet.write(tune, settings.style(), settings.marks(), choice);
        List<BesideSheet> sheets = new ArrayList<>();
        for (int i = 0; i < scores.size(); i++) {
            sheets.add(new BesideSheet(
                    StageChoice.ending(choice.orders().get(i)), scores.get(i).encode()));
        }
        return sheets;
    }
}
