package org.bellowscribe.instrument.file;

import java.util.Locale;

/** How well the notes of an instrument are known. */
public enum SourceStatus {
    /** A published table of this very instrument. */
    PUBLISHED,
    /** A published table of another key, moved. */
    TRANSPOSED,
    /** Put together from published tables of other instruments. */
    COMPOSED,
    /** From memory: no source was found. */
    FROM_MEMORY,
    /** Some notes are a guess, because no source settles them. */
    OPEN,
    /** The instrument of a user. */
    OWN;

    /** Returns the words of the instrument file: kebab-case, such as {@code from-memory}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the status of the words of an instrument file. */
    static SourceStatus of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
