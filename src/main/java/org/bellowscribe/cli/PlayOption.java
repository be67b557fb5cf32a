package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.marking.Played;

/** What is played, whatever is printed. */
final class PlayOption {

    private static final String MELODY = "melody";
    private static final String LEFT_HAND = "left-hand";
    private static final String AIR = "air";
    private static final List<String> EVERYTHING = List.of(MELODY, LEFT_HAND, AIR);

    static final CommandOption<List<String>> PLAY = new CommandOption<>(
            "play",
            "LIST",
            "What is played, of %s, with commas between; all if not given. Without air the air button is left alone."
                    .formatted(String.join(", ", EVERYTHING)),
            new WordList(EVERYTHING));

    private PlayOption() {}

    static Played of(CommandWords words) throws UsageException {
        List<String> played = words.get(PLAY, EVERYTHING);
        if (!played.contains(MELODY) && !played.contains(LEFT_HAND)) {
            throw new UsageException(
                    "--%s needs a hand that plays.%n  Maybe add %s or %s.".formatted(PLAY.name(), MELODY, LEFT_HAND));
        }
        return new Played(played.contains(MELODY), played.contains(LEFT_HAND), played.contains(AIR));
    }
}
