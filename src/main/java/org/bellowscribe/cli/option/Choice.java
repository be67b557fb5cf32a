package org.bellowscribe.cli.option;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads one of a few words.
 *
 * @param <T> what they stand for
 */
public final class Choice<T> implements ValueReader<T> {

    private final Map<String, T> words = new LinkedHashMap<>();

    /** Adds a word. */
    public Choice<T> or(String word, T meaning) {
        words.put(word, meaning);
        return this;
    }

    @Override
    public List<String> words() {
        return List.copyOf(words.keySet());
    }

    @Override
    public String takes() {
        return either(List.copyOf(words.keySet()));
    }

    /** Returns the words as they stand for a value in the help: {@code again|once}, which says the limits too. */
    String argument() {
        return String.join("|", words.keySet());
    }

    @Override
    public String limits() {
        return "";
    }

    @Override
    public T read(String option, String text) throws UsageException {
        T meaning = words.get(text);
        if (meaning == null) {
            throw UsageException.notTaken(option, takes(), text);
        }
        return meaning;
    }

    /** Returns words such as {@code a, b or c}. */
    static String either(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }
}
