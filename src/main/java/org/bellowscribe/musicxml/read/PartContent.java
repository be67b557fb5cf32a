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
 * @param bad a value of the part, outside its notes, that cannot be read, or null
 * @param assumptions what was filled in
 */
record PartContent(
        String id,
        String name,
        List<MeasureContent> measures,
        @Nullable OddValue bad,
        List<Diagnostic> assumptions) {

    Stream<WrittenNote> notes() {
        return measures.stream().flatMap(measure -> measure.notes().stream()).filter(WrittenNote::isNote);
    }
}
