package org.bellowscribe.annotation;

import java.util.List;

/**
 * What the left hand plays, written out as a part of its own, in the key of the sheet.
 *
 * @param melody id of the part with the melody, whose measures and bar lines it has
 * @param measures one for each measure of that part
 */
public record LeftHandPart(String melody, List<PartMeasure> measures) {

    /** Copies the measures. */
    public LeftHandPart {
        measures = List.copyOf(measures);
    }

    /** Returns true if nothing is ever struck. */
    public boolean isSilent() {
        return measures.stream().allMatch(measure -> measure.notes().isEmpty());
    }
}
