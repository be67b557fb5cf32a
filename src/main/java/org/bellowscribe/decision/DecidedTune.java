package org.bellowscribe.decision;

import java.util.List;
import org.bellowscribe.cause.AirCause;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;

/**
 * A tune with all that was decided about it, checked by the replay.
 *
 * @param task what was solved, with all pins; if the melody is not played, its events are silent there
 * @param tune the tune as it sounds, with its melody
 * @param written the tune as its score has it
 * @param notesKept true if the sheet keeps the written notes, as that of a transposing instrument does
 * @param solution how it is played: one step for each event of {@code tune}; without buttons where the melody is not
 *     played
 * @param steered what a teacher fixed and asked
 * @param airCauses why the air button is pressed, for every press in score order; empty for another way to play the tune
 *     and for a stage, about which nobody asks
 */
public record DecidedTune(
        Task task,
        Tune tune,
        Tune written,
        boolean notesKept,
        Solution solution,
        Steered steered,
        List<AirCause> airCauses) {

    /** Copies the list. */
    public DecidedTune {
        airCauses = List.copyOf(airCauses);
    }

    /** Creates a tune of which nobody asks why the air button is pressed. */
    public DecidedTune(Task task, Tune tune, Tune written, boolean notesKept, Solution solution, Steered steered) {
        this(task, tune, written, notesKept, solution, steered, List.of());
    }

    /** Returns the instrument on which it is played. */
    public Instrument instrument() {
        return task.instrument();
    }

    /** Returns the id of the manner of playing. */
    public String manner() {
        return task.options().manner().id();
    }

    /** Returns by how many semitones it sounds above its score, below it if negative. */
    public int transposedBy() {
        return task.moved();
    }

    /** Returns the tune as the marked sheet has it. */
    public Tune onSheet() {
        return notesKept ? written : tune;
    }

    /** Returns by how many semitones it sounds above the marked sheet, below it if negative. */
    public int above() {
        return notesKept ? transposedBy() : 0;
    }

    /** Returns the same tune played another way. */
    public DecidedTune with(Solution other) {
        return new DecidedTune(task, tune, written, notesKept, other, steered);
    }
}
