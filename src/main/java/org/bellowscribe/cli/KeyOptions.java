package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.bellowscribe.marking.KeyChoice;

/** In which key to play. */
final class KeyOptions {

    private static final String TRANSPOSE = "transpose";
    private static final String KEEP_NOTES = "keep-notes";

    private KeyOptions() {}

    static void addTo(Options options) {
        options.addOption(Option.builder()
                .longOpt(TRANSPOSE)
                .hasArg()
                .argName("N|auto")
                .desc("Write the score N semitones higher, lower if negative; auto: in the nearest key that can be"
                        + " played.")
                .get());
        options.addOption(Option.builder()
                .longOpt(KEEP_NOTES)
                .desc("With --transpose: leave the notes of the sheet, and say which key sounds.")
                .get());
    }

    static KeyChoice of(CommandLine line) throws UsageException {
        String text = line.getOptionValue(TRANSPOSE);
        boolean keepsNotes = line.hasOption(KEEP_NOTES);
        if (text == null) {
            if (keepsNotes) {
                throw new UsageException("--keep-notes goes with --transpose.\n  Maybe add --transpose auto.");
            }
            return KeyChoice.AS_WRITTEN;
        }
        if (text.equals("auto")) {
            return new KeyChoice(null, keepsNotes);
        }
        int most = KeyChoice.MOST_SEMITONES;
        if (!text.matches("[+-]?\\d{1,2}") || Math.abs(Integer.parseInt(text)) > most) {
            throw new UsageException(
                    "--transpose takes auto or a whole number from -%d to %d, not %s.".formatted(most, most, text));
        }
        return new KeyChoice(Integer.valueOf(text), keepsNotes);
    }
}
