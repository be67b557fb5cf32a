package org.bellowscribe.annotation;

import java.util.List;
import org.bellowscribe.score.Measure;

/**
 * A measure of a part of its own.
 *
 * @param measure the measure of the melody that it stands under
 * @param notes what is struck, in order of time, without overlap
 * @param words words above it, in order of time
 */
public record PartMeasure(Measure measure, List<PartNote> notes, List<PartWords> words) {

    /** Copies the lists. */
    public PartMeasure {
        notes = List.copyOf(notes);
        words = List.copyOf(words);
    }
}
