package org.bellowscribe.solver;

import java.util.List;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;

/**
 * All that decides how a tune is played.
 *
 * @param tune the tune as it is to sound, with at least one event
 * @param instrument the instrument
 * @param wanted what the left hand should sound; empty for none
 * @param options manner of playing, bounds and pins
 * @param moved semitones by which the tune was moved from its sheet, so that advice is told from the sheet
 */
public record Task(Tune tune, Instrument instrument, List<WantedSound> wanted, SolverOptions options, int moved) {

    /** Copies the list. */
    public Task {
        wanted = List.copyOf(wanted);
    }

    /** Returns this task with other options. */
    public Task with(SolverOptions other) {
        return new Task(tune, instrument, wanted, other, moved);
    }

    /** Returns this task with other pins. */
    public Task with(Pins pins) {
        return with(options.withPins(pins));
    }
}
