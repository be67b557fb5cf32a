package org.bellowscribe.annotation.style;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Fonts, sizes and colors of the marks, as attributes of MusicXML. They go by sorts of marks, which differ in place or text
 * too, so that color is never the only sign.
 *
 * @param attributes by sort of mark ({@link #WORDS}, {@link #FINGERS} or the name of a line below the notes) the attributes,
 *     such as {@code font-size} and {@code color}
 */
public record Fonts(SortedMap<String, SortedMap<String, String>> attributes) {

    /** Words beside the staff. */
    public static final String WORDS = "words";

    /** Fingers at note heads. */
    public static final String FINGERS = "fingers";

    /** All marks look as the notation program likes. */
    public static final Fonts NONE = new Fonts(new TreeMap<>());

    /** Copies the map. */
    public Fonts {
        SortedMap<String, SortedMap<String, String>> copy = new TreeMap<>();
        attributes.forEach((name, font) -> copy.put(name, Collections.unmodifiableSortedMap(new TreeMap<>(font))));
        attributes = Collections.unmodifiableSortedMap(copy);
    }

    /** Returns the attributes of a sort of marks; empty if it has none. */
    public SortedMap<String, String> of(String sort) {
        return attributes.getOrDefault(sort, Collections.emptySortedMap());
    }
}
