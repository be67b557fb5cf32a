package org.bellowscribe.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.bellowscribe.batch.Result;

/**
 * What lines about a book file have that others have not: of which edition they are.
 *
 * @param folder the folder of the edition
 */
record EditionLines(String folder) implements JsonReport.Extra {

    @Override
    public void tune(JsonGenerator json, Result result) throws IOException {
        end(json);
    }

    @Override
    public void end(JsonGenerator json) throws IOException {
        json.writeStringField("edition", folder);
    }
}
