package org.bellowscribe.cli;

import java.util.List;
import java.util.OptionalInt;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.NumberOr;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.marking.KeyChoice;

/** In which key to play. */
final class KeyOptions {

    private static final CommandOption<OptionalInt> TRANSPOSE = new CommandOption<>(
            "transpose",
            "N|auto",
            "Write the score N semitones higher, lower if negative; auto: in the nearest key that can be played.",
            new NumberOr("auto", new WholeNumber(-KeyChoice.MOST_SEMITONES, KeyChoice.MOST_SEMITONES)));
    private static final CommandOption<Boolean> KEEP_NOTES = CommandOption.flag(
            "keep-notes", "With --transpose: leave the notes of the sheet, and say which key sounds.");

    static final List<CommandOption<?>> ALL = List.of(TRANSPOSE, KEEP_NOTES);

    private KeyOptions() {}

    static KeyChoice of(CommandWords words) throws UsageException {
        OptionalInt semitones = words.get(TRANSPOSE);
        boolean keepsNotes = words.has(KEEP_NOTES);
        if (semitones == null) {
            if (keepsNotes) {
                throw new UsageException(
                        "--keep-notes goes with --transpose.%n  Maybe add --transpose auto.".formatted());
            }
            return KeyChoice.AS_WRITTEN;
        }
        return new KeyChoice(semitones.isPresent() ? semitones.getAsInt() : null, keepsNotes);
    }
}
