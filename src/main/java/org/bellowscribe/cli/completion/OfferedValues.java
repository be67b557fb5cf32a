package org.bellowscribe.cli.completion;

import java.util.List;
import org.bellowscribe.cli.option.CommandOption;

/**
 * What a shell can offer for the value of an option.
 *
 * @param words words that it may be; empty if any text will do
 * @param list true if several may stand with commas between
 * @param files true if it may be a file
 * @param folders true if it is a folder
 */
record OfferedValues(List<String> words, boolean list, boolean files, boolean folders) {

    /** Returns what to offer for an option that takes a value. */
    static OfferedValues of(CommandOption<?> option) {
        String argument = option.argument();
        return new OfferedValues(
                option.reader().words(), argument.contains("LIST"), argument.contains("FILE"), argument.equals("DIR"));
    }

    /** Returns the words with spaces between. */
    String line() {
        return String.join(" ", words);
    }
}
