package org.bellowscribe.theory;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A key as a player names it.
 *
 * @param tonic the tonic
 * @param mode the mode; null if whatever mode a tune has is meant
 * @param text the name as it was written
 */
public record KeyName(PitchClass tonic, @Nullable Mode mode, String text) {

    /** What a name looks like, for advice. */
    public static final String FORM = "a tonic such as G or Bb, alone or with a mode ("
            + Arrays.stream(Mode.values()).map(Mode::label).collect(Collectors.joining(", ")) + ")";

    /**
     * Reads a name.
     *
     * @return null if it is none
     */
    public static @Nullable KeyName parse(String text) {
        String[] words = text.strip().split("\\s+", -1);
        if (words.length > 2 || !words[0].matches("[A-G](#|b)?")) {
            return null;
        }
        Mode mode = words.length < 2 ? null : mode(words[1]);
        return words.length == 2 && mode == null ? null : new KeyName(PitchClass.parse(words[0]), mode, text.strip());
    }

    private static @Nullable Mode mode(String word) {
        return Arrays.stream(Mode.values())
                .filter(mode -> mode.label().equals(word))
                .findFirst()
                .orElse(null);
    }

    /** Tells whether a tune in a key can be moved to this one: no move changes a mode. */
    public boolean isReachedFrom(Key key) {
        return mode == null || mode == key.mode();
    }
}
