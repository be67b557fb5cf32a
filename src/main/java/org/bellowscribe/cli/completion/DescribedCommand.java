package org.bellowscribe.cli.completion;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.cli.option.CommandOption;

/**
 * A command as its declaration tells it.
 *
 * @param name the word that calls it
 * @param usage what stands after that word, such as {@code INPUT... --out DIR}
 * @param summary sentences for people
 * @param options its options
 * @param firstWords words that may stand first behind it, each with those that may follow it, where a file may be meant too;
 *     empty if files come first
 */
public record DescribedCommand(
        String name,
        String usage,
        String summary,
        List<CommandOption<?>> options,
        Map<String, List<String>> firstWords) {

    /** Copies the options and words, in their order. */
    public DescribedCommand {
        options = List.copyOf(options);
        firstWords = Collections.unmodifiableMap(new LinkedHashMap<>(firstWords));
    }
}
