package org.bellowscribe.musicxml.read;

import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.Diagnostic;
import org.jspecify.annotations.Nullable;

/**
 * What one part holds.
 *
 * @param id id of the part; may be empty
 * @param name printed name; may be empty
 * @param measures its measures
 * @param staves clefs and lyrics of its staves
 * @param bad a value that leaves the times or pitches of the whole part unknown, or null
 * @param assumption what was filled in, or null
 */
record PartContent(
        String id,
        String name,
        List<MeasureContent> measures,
        Staves staves,
        @Nullable OddValue bad,
        @Nullable Diagnostic assumption) {

    Stream<WrittenNote> notes() {
        return measures.stream().flatMap(measure -> measure.notes().stream()).filter(WrittenNote::isNote);
    }
}
