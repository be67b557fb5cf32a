package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.marking.Played;

/** Reads what is played, whatever is printed. */
record PlayedReader() implements ValueReader<Played> {

    private static final String MELODY = "melody";
    private static final String LEFT_HAND = "left-hand";
    private static final String AIR = "air";

    @Override
    public List<String> words() {
        return List.of(MELODY, LEFT_HAND, AIR);
    }

    @Override
    public String takes() {
        return "%s or %s or both, with or without %s".formatted(MELODY, LEFT_HAND, AIR);
    }

    @Override
    public Played read(String option, String text) throws UsageException {
        List<String> words = WordList.split(text);
        boolean known = List.of(MELODY, LEFT_HAND, AIR).containsAll(words);
        if (!known || (!words.contains(MELODY) && !words.contains(LEFT_HAND))) {
            throw known
                    ? new UsageException(
                            "--%s %s leaves nothing to play: the air button goes with %s, %s or both.%n  Maybe %s,%s."
                                    .formatted(option, AIR, MELODY, LEFT_HAND, MELODY, AIR))
                    : UsageException.notTaken(option, takes(), text);
        }
        return new Played(words.contains(MELODY), words.contains(LEFT_HAND), words.contains(AIR));
    }
}
