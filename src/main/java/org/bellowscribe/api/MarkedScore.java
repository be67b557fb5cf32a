package org.bellowscribe.api;

import java.io.Serializable;
import java.util.List;

/**
 * What came of a score.
 *
 * @param sheet the file of the marked score, compressed if the score's was; empty if it was refused
 * @param record every decision as JSON, in the form of {@code schemas/record.schema.json}; of a refused score why
 * @param remarks all there is to say
 */
public record MarkedScore(byte[] sheet, String record, List<Remark> remarks) implements Serializable {

    /** Copies the remarks. */
    public MarkedScore {
        remarks = List.copyOf(remarks);
    }

    /** Returns false if the score was refused. */
    public boolean isMarked() {
        return sheet.length > 0;
    }
}
