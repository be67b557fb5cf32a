package org.bellowscribe.cli.option;

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

    /** Returns words that go on after "takes": the limits or the choice; empty if the name of the argument says it all. */
    default String takes() {
        return "";
    }

    /** Returns what the help says of its limits, to go on after "Takes"; empty if the argument or the text says it. */
    default String limits() {
        return takes();
    }
}
