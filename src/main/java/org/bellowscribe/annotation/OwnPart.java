package org.bellowscribe.annotation;

import java.util.List;

/**
 * A part of ours, written out in the key of the sheet.
 *
 * @param look what it looks like
 * @param melody id of the part with the melody, whose measures and bar lines it has
 * @param measures one for each measure of that part
 */
public record OwnPart(PartLook look, String melody, List<PartMeasure> measures) {

    /** Copies the measures. */
    public OwnPart {
        measures = List.copyOf(measures);
    }

    /** Creates a part for the left hand. */
    public OwnPart(String melody, List<PartMeasure> measures) {
        this(PartLook.LEFT_HAND, melody, measures);
    }

    /** Returns true if nothing is ever struck. */
    public boolean isSilent() {
        return measures.stream().allMatch(measure -> measure.notes().isEmpty());
    }
}
