package org.bellowscribe.cli.option;

import java.util.List;
import java.util.stream.Stream;

/**
 * Reads words with commas between, each of which must be one of a few.
 *
 * @param known the words
 */
public record WordList(List<String> known) implements ValueReader<List<String>> {

    /** Copies the list. */
    public WordList {
        known = List.copyOf(known);
    }

    @Override
    public List<String> words() {
        return known;
    }

    @Override
    public String takes() {
        return "%s or %s".formatted(String.join(", ", known), String.join(",", known));
    }

    @Override
    public String limits() {
        return "";
    }

    @Override
    public List<String> read(String option, String text) throws UsageException {
        List<String> words = split(text);
        if (!known.containsAll(words)) {
            throw UsageException.notTaken(option, takes(), text);
        }
        return words;
    }

    /** Returns the words between commas without the white space around them. */
    public static List<String> split(String list) {
        return Stream.of(list.split(",", -1)).map(String::strip).toList();
    }
}
