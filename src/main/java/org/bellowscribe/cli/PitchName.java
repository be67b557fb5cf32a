package org.bellowscribe.cli;

import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.theory.Pitch;

/** Reads a note with its octave. */
record PitchName() implements ValueReader<Pitch> {

    @Override
    public String takes() {
        return "a note with its octave, such as A4 or F#4";
    }

    @Override
    public Pitch read(String option, String text) throws UsageException {
        try {
            return Pitch.parse(text);
        } catch (IllegalArgumentException e) {
            throw UsageException.notTaken(option, takes(), text);
        }
    }
}
