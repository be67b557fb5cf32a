package org.bellowscribe.cli;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.marking.LeftHandChoice;

/** What to write out of the left hand. */
final class LeftHandOptions {

    static final String WRITTEN = "written-left-hand";
    private static final String PART = "part";
    private static final String SHEET = "sheet";

    private LeftHandOptions() {}

    static void addTo(Options options) {
        ValueOption.add(
                options,
                WRITTEN,
                "LIST",
                "part: add a part in the bass clef with the notes that the left hand sounds; sheet: write them as a score"
                        + " of their own, NAME.left-hand.musicxml; or part,sheet.");
    }

    static LeftHandChoice of(CommandLine line) throws UsageException {
        String text = line.getOptionValue(WRITTEN);
        if (text == null) {
            return LeftHandChoice.NONE;
        }
        List<String> words = Stream.of(text.split(",")).map(String::strip).toList();
        for (String word : words) {
            if (!word.equals(PART) && !word.equals(SHEET)) {
                throw new UsageException("--%s takes part, sheet or part,sheet, not %s.".formatted(WRITTEN, text));
            }
        }
        return new LeftHandChoice(words.contains(PART), words.contains(SHEET));
    }
}
