package org.bellowscribe.cli.option;

import java.nio.file.Path;
import java.util.List;

/**
 * Reads the value of an option.
 *
 * @param <T> what it is then
 */
public interface ValueReader<T> {

    /**
     * Reads a value.
     *
     * @param option name of the option without hyphens
     * @param text the value as the user wrote it
     * @throws UsageException if it is not taken; says what is
     */
    T read(String option, String text) throws UsageException;

    /** Returns the words that a value may be, or may have with commas between, for a shell to offer; none if it is free. */
    default List<String> words() {
        return List.of();
    }

    /** Returns the files that a value names and that are read for it; none unless a reader says otherwise. */
    default List<Path> files(String text) {
        return List.of();
    }

    /**
     * Returns a value as it is written from the current folder.
     *
     * @param folder the folder from which paths in the value go
     * @param text the value as it stands there
     */
    default String fromFolder(Path folder, String text) {
        return text;
    }

    /** Returns words that go on after "takes": the limits or the choice; empty if the name of the argument says it all. */
    default String takes() {
        return "";
    }

    /** Returns what the help says of its limits, to go on after "Takes"; empty if the argument or the text says it. */
    default String limits() {
        return takes();
    }
}
