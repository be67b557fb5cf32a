package org.bellowscribe.cli;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.marking.Played;

/** What is played, whatever is printed. */
final class PlayOption {

    private static final String PLAY = "play";
    private static final String MELODY = "melody";
    private static final String LEFT_HAND = "left-hand";
    private static final String AIR = "air";
    private static final List<String> ALL = List.of(MELODY, LEFT_HAND, AIR);

    private PlayOption() {}

    static void addTo(Options options) {
        ValueOption.add(
                options,
                PLAY,
                "LIST",
                "What is played, of %s, with commas between; all if not given. Without air the air button is left alone."
                        .formatted(String.join(",", ALL)));
    }

    static Played of(CommandLine line) throws UsageException {
        String text = line.getOptionValue(PLAY);
        if (text == null) {
            return Played.ALL;
        }
        Set<String> words =
                new TreeSet<>(Stream.of(text.split(",")).map(String::strip).toList());
        if (!ALL.containsAll(words) || !words.contains(MELODY) && !words.contains(LEFT_HAND)) {
            throw new UsageException("--%s takes %s or %s or both, with or without %s, not %s."
                    .formatted(PLAY, MELODY, LEFT_HAND, AIR, text));
        }
        return new Played(words.contains(MELODY), words.contains(LEFT_HAND), words.contains(AIR));
    }
}
