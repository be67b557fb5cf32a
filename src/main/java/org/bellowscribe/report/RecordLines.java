package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/** Lays a record out for eyes and line-by-line comparison: one line a key, in long lists one line an entry. */
final class RecordLines implements PrettyPrinter {

    private int depth;

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
