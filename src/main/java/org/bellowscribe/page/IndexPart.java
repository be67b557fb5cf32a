package org.bellowscribe.page;

import java.util.List;

/**
 * Tunes of the index that belong together: those for one instrument.
 *
 * @param name what they are called, such as the name of the instrument
 * @param lines the tunes in the order in which to show them
 */
public record IndexPart(String name, List<IndexLine> lines) {

    /** Copies the list. */
    public IndexPart {
        lines = List.copyOf(lines);
    }

    /** Returns how many tunes there are, and how many have no page. */
    String count() {
        long marked = lines.stream().filter(line -> line.summary() != null).count();
        long not = lines.size() - marked;
        return "%d %s%s"
                .formatted(marked, marked == 1 ? "tune" : "tunes", not == 0 ? "" : ", %d not marked".formatted(not));
    }
}
