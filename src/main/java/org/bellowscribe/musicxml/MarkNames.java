package org.bellowscribe.musicxml;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How our elements are told from those of the score: by an attribute that begins with our prefix. */
final class MarkNames {

    /** What the name or id of each of our elements begins with. */
    static final String PREFIX = "bellowscribe-";

    /** What the id of a line about the tune begins with. */
    static final String LINE = PREFIX + "t";

    // Only elements that may be ours; any other element may bear the prefix and stays.
    private static final Set<String> WITH_ID =
            Set.of("direction", "harmony", "notations", "technical", "part", "score-part");

    private MarkNames() {}

    /** Tells whether an element of a score is one that we added. */
    static boolean isOurs(XmlElement element) {
        if (element.is("lyric")) {
            return isOurs(element.attribute("name"));
        }
        return WITH_ID.contains(element.name()) && isOurs(element.attribute("id"));
    }

    /** Tells whether a name or id is one that we gave. */
    static boolean isOurs(@Nullable String value) {
        return value != null && value.startsWith(PREFIX);
    }
}
