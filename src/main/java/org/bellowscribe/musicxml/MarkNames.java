package org.bellowscribe.musicxml;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How our elements are told from those of the score: by an attribute that begins with our prefix. */
final class MarkNames {

    /** What the name or id of each of our elements begins with. */
    static final String PREFIX = "bellowscribe-";

    // Only elements that may be ours; any other element may bear the prefix and stays.
    private static final Map<String, String> ATTRIBUTES = Map.of(
            "lyric", "name", "direction", "id", "harmony", "id", "notations", "id", "part", "id", "score-part", "id");

    private MarkNames() {}

    /** Tells whether an element of a score is one that we added. */
    static boolean isOurs(XmlElement element) {
        String attribute = ATTRIBUTES.get(element.name());
        return attribute != null && isOurs(element.attribute(attribute));
    }

    /** Tells whether a name or id is one that we gave. */
    static boolean isOurs(@Nullable String value) {
        return value != null && value.startsWith(PREFIX);
    }
}
