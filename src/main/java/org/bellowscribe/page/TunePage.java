package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.exercise.Exercise;
import org.bellowscribe.solver.explain.Explanation;

/**
 * What a page shows.
 *
 * @param tune all that was decided
 * @param remarks all that there is to say about the tune
 * @param explained events whose other ways were priced in advance
 * @param news what a pupil meets in it for the first time, in words; empty where nobody asked
 * @param style the style of the marks, in whose language the words are
 * @param difficulty how difficult it is
 * @param exercises what to practise by itself
 * @param score the marked score as a compressed file; its notes of melody bear the ids of {@link NoteIds}
 */
public record TunePage(
        DecidedTune tune,
        List<Diagnostic> remarks,
        List<Explanation> explained,
        List<String> news,
        Style style,
        Difficulty difficulty,
        List<Exercise> exercises,
        byte[] score) {

    /** Copies the lists. */
    public TunePage {
        remarks = List.copyOf(remarks);
        explained = List.copyOf(explained);
        news = List.copyOf(news);
        exercises = List.copyOf(exercises);
    }
}
