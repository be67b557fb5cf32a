package org.bellowscribe.annotation;

import java.util.List;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/**
 * All that marks are made from.
 *
 * @param tune the tune
 * @param instrument the instrument it is played on
 * @param solution how it is played; its steps stand in the order of the tune's events
 * @param style labels and signs
 * @param above how many semitones the tune sounds above the notes of the sheet, below them if negative
 */
public record Arrangement(Tune tune, Instrument instrument, Solution solution, Style style, int above) {

    /** Checks that the solution belongs to the tune. */
    public Arrangement {
        if (solution.steps().size() != tune.events().size()) {
            throw new IllegalArgumentException("The solution (%d steps) must have one step for each event (%d)."
                    .formatted(solution.steps().size(), tune.events().size()));
        }
    }

    /** Creates an arrangement of a tune that sounds as its sheet says. */
    public Arrangement(Tune tune, Instrument instrument, Solution solution, Style style) {
        this(tune, instrument, solution, style, 0);
    }

    /** Creates the arrangement of a tune that was decided. */
    public static Arrangement of(DecidedTune decided, Style style) {
        return new Arrangement(decided.tune(), decided.instrument(), decided.solution(), style, decided.above());
    }

    /** Returns the steps at which the right hand presses buttons, in score order; none if the melody is not played. */
    public List<Step> pressed() {
        PlayNeighbors neighbors = PlayNeighbors.of(tune);
        return solution.steps().stream()
                .filter(step -> !step.buttons().isEmpty() && !soundsOn(step, neighbors))
                .toList();
    }

    // A note tied over a bar line has its marks where it is struck.
    private boolean soundsOn(Step step, PlayNeighbors neighbors) {
        return step.event().heldOver()
                && neighbors.before(step.event().index()).stream()
                        .map(solution.steps()::get)
                        .allMatch(before -> before.direction() == step.direction()
                                && before.buttons().equals(step.buttons())
                                && before.fingers().equals(step.fingers()));
    }

    /** Returns the steps at the notes of the melody, played or not, in score order. */
    public List<Step> notes() {
        return solution.steps().stream().filter(step -> !step.event().isRest()).toList();
    }

    /**
     * Returns what is played at an event.
     *
     * @param event 0-based index
     */
    public Step step(int event) {
        return solution.steps().get(event);
    }
}
