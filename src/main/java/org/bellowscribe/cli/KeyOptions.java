package org.bellowscribe.cli;

import java.util.List;
import java.util.OptionalInt;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.NumberOr;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.marking.KeyChoice;
import org.bellowscribe.theory.KeyName;

/** In which key to play. */
final class KeyOptions {

    private static final CommandOption<OptionalInt> TRANSPOSE = new CommandOption<>(
                    "transpose",
                    "N|auto",
                    "Write the score N semitones higher, lower if negative; auto: in the nearest key that can be played.",
                    new NumberOr("auto", new WholeNumber(-KeyChoice.MOST_SEMITONES, KeyChoice.MOST_SEMITONES)))
            .in(OptionGroup.PLAYED);
    private static final CommandOption<Boolean> KEEP_NOTES = CommandOption.flag(
                    "keep-notes", "With --transpose: leave the notes of the sheet, and say which key sounds.")
            .in(OptionGroup.PLAYED);

    private static final CommandOption<KeyName> KEY = new CommandOption<>(
                    "key",
                    "KEY",
                    "Write the score in this key, in the nearest octave that can be played: a tonic such as G or Bb, alone or with"
                            + " the mode of the tune.",
                    KeyOptions::key)
            .in(OptionGroup.PLAYED);

    static final List<CommandOption<?>> ALL = List.of(TRANSPOSE, KEY, KEEP_NOTES);

    private KeyOptions() {}

    private static KeyName key(String option, String text) throws UsageException {
        KeyName name = KeyName.parse(text);
        if (name == null) {
            throw UsageException.notTaken(option, KeyName.FORM, text);
        }
        return name;
    }

    static KeyChoice of(CommandWords words) throws UsageException {
        OptionalInt semitones = words.get(TRANSPOSE);
        boolean keepsNotes = words.has(KEEP_NOTES);
        KeyName key = words.get(KEY);
        if (key != null) {
            if (semitones != null) {
                throw new UsageException(
                        "--key and --transpose exclude each other.%n  Maybe leave one out.".formatted());
            }
            return new KeyChoice(null, keepsNotes, key);
        }
        if (semitones == null) {
            if (keepsNotes) {
                throw new UsageException(
                        "--keep-notes goes with --transpose or --key.%n  Maybe add --transpose auto.".formatted());
            }
            return KeyChoice.AS_WRITTEN;
        }
        return new KeyChoice(semitones.isPresent() ? semitones.getAsInt() : null, keepsNotes);
    }
}
