package org.bellowscribe.cli.option;

import java.util.List;
import java.util.OptionalInt;

/**
 * Reads a whole number, or a word in place of one.
 *
 * @param word the word
 * @param number the numbers
 */
public record NumberOr(String word, WholeNumber number) implements ValueReader<OptionalInt> {

    @Override
    public List<String> words() {
        return List.of(word);
    }

    @Override
    public String takes() {
        return word + " or " + number.takes();
    }

    @Override
    public OptionalInt read(String option, String text) throws UsageException {
        if (text.equals(word)) {
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(number.read(option, text));
        } catch (UsageException e) {
            throw UsageException.notTaken(option, takes(), text);
        }
    }
}
