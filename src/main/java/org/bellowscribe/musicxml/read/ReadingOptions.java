package org.bellowscribe.musicxml.read;

import org.jspecify.annotations.Nullable;

/**
 * Which line of a score to read; null leaves the choice to the reader.
 *
 * @param part id of the part, such as {@code P1}, or its name, or its place in the score from 1; or null
 * @param staff number of the staff in the part, from 1, or null
 * @param voice name of the voice, such as {@code 1}, or null
 * @param quartersPerMinute the tempo in quarters a minute, whatever the score says; or null
 */
public record ReadingOptions(
        @Nullable String part,
        @Nullable Integer staff,
        @Nullable String voice,
        @Nullable Integer quartersPerMinute) {

    /** Creates options with the tempo of the score. */
    public ReadingOptions(@Nullable String part, @Nullable Integer staff, @Nullable String voice) {
        this(part, staff, voice, null);
    }

    /** Leaves every choice to the reader. */
    public static final ReadingOptions DEFAULT = new ReadingOptions(null, null, null);
}
