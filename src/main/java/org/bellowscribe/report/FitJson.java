package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.TuneFit;

/** Fits as one JSON object: {@code tunes} with their trials, then the {@code book}; one line a tune or instrument. */
public final class FitJson implements FitWriter {

    private static final int VERSION = 1;

    private final int best;
    private final StringWriter text = new StringWriter();
    private final JsonGenerator json;

    /**
     * Creates the writer.
     *
     * @param best how many trials of a tune to write; 0 for all
     */
    public FitJson(int best) {
        this.best = best;
        try {
            json = JsonLines.into(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @FunctionalInterface
    private interface Content {
        void write() throws IOException;
    }

    @Override
    public String begin() {
        return piece(() -> {
            json.writeStartObject();
            json.writeNumberField("fitVersion", VERSION);
            json.writeArrayFieldStart("tunes");
        });
    }

    @Override
    public String tune(TuneFit fit) {
        return piece(() -> {
            json.writeStartObject();
            json.writeStringField("file", fit.file());
            json.writeStringField("title", fit.tune().title());
            json.writeStringField("key", fit.tune().measures().get(0).key().name());
            FitValues.trials(json, fit, best);
            json.writeEndObject();
        });
    }

    @Override
    public String end(BookFit book) {
        return piece(() -> {
                    json.writeEndArray();
                    FitValues.book(json, book);
                    json.writeEndObject();
                })
                + "\n";
    }

    /** Returns what was added to the text. */
    private String piece(Content content) {
        try {
            content.write();
            json.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String added = text.toString();
        text.getBuffer().setLength(0);
        return added;
    }
}
