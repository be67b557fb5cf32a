package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.Writer;

/**
 * How all our JSON looks, made for eyes and line-by-line comparison: one line a key, in long lists one line an entry.
 */
final class JsonLines implements PrettyPrinter {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private int depth;

    private JsonLines() {}

    /** Returns a generator that writes so. */
    static JsonGenerator into(Writer text) throws IOException {
        return FACTORY.createGenerator(text).setPrettyPrinter(new JsonLines());
    }

    @Override
    public void writeRootValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw('\n');
    }

    @Override
    public void writeStartObject(JsonGenerator json) throws IOException {
        json.writeRaw('{');
        depth++;
    }

    @Override
    public void beforeObjectEntries(JsonGenerator json) throws IOException {
        json.writeRaw(depth == 1 ? "\n  " : "");
    }

    @Override
    public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw(": ");
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
        json.writeRaw(depth == 1 ? ",\n  " : ", ");
    }

    @Override
    public void writeEndObject(JsonGenerator json, int entries) throws IOException {
        depth--;
        json.writeRaw(depth == 0 ? "\n}" : "}");
    }

    @Override
    public void writeStartArray(JsonGenerator json) throws IOException {
        json.writeRaw('[');
        depth++;
    }

    @Override
    public void beforeArrayValues(JsonGenerator json) throws IOException {
        json.writeRaw(depth == 2 ? "\n    " : "");
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw(depth == 2 ? ",\n    " : ", ");
    }

    @Override
    public void writeEndArray(JsonGenerator json, int entries) throws IOException {
        depth--;
        json.writeRaw(depth == 1 && entries > 0 ? "\n  ]" : "]");
    }
}
