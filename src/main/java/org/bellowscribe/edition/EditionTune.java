package org.bellowscribe.edition;

import java.util.List;
import java.util.SortedSet;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.syllabus.Thing;

/**
 * A tune of an edition.
 *
 * @param title how the book calls it
 * @param file name of its sheet
 * @param further names of further sheets of it, such as those of its stages
 * @param tune all that was decided
 * @param style labels and signs of its sheet
 * @param marks ids of the marks on its sheet
 * @param difficulty how difficult it is
 * @param news what is new in it
 * @param notes notes for the pupil
 * @param problems what there is to warn of, in sentences
 */
public record EditionTune(
        String title,
        String file,
        List<String> further,
        DecidedTune tune,
        Style style,
        List<String> marks,
        Difficulty difficulty,
        SortedSet<Thing> news,
        List<String> notes,
        List<String> problems) {

    /** Returns the same tune after it was written: with its further sheets and what there is to warn of. */
    public EditionTune written(List<String> sheets, List<String> warnings) {
        return new EditionTune(title, file, sheets, tune, style, marks, difficulty, news, notes, warnings);
    }

    /** Copies the lists. */
    public EditionTune {
        further = List.copyOf(further);
        marks = List.copyOf(marks);
        notes = List.copyOf(notes);
        problems = List.copyOf(problems);
    }
}
