package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.solver.Cost;

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
            Map<Integer, String> keys = fit.keyNames();
            json.writeArrayFieldStart("trials");
            int count = best == 0
                    ? fit.trials().size()
                    : Math.min(best, fit.trials().size());
            for (Trial trial : fit.trials().subList(0, count)) {
                write(trial, keys.getOrDefault(trial.semitones(), ""));
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private void write(Trial trial, String key) throws IOException {
        json.writeStartObject();
        json.writeStringField("instrument", trial.instrument().id());
        json.writeNumberField("transposedBy", trial.semitones());
        json.writeStringField("key", key);
        json.writeStringField("verdict", trial.verdict().label());
        Cost cost = trial.cost();
        if (cost != null) {
            json.writeNumberField("cost", cost.total());
            json.writeBooleanField("proved", cost.isProved());
        }
        Diagnostic obstacle = trial.obstacle();
        if (obstacle == null) {
            json.writeNumberField("estimate", trial.estimate());
        } else {
            json.writeStringField("code", obstacle.code().id());
            json.writeNumberField("measure", obstacle.place().measure());
            json.writeStringField("reason", obstacle.text());
        }
        json.writeEndObject();
    }

    @Override
    public String end(BookFit book) {
        return piece(() -> {
                    json.writeEndArray();
                    json.writeArrayFieldStart("book");
                    for (BookFit.Line line : book.lines()) {
                        write(book, line);
                    }
                    json.writeEndArray();
                    json.writeEndObject();
                })
                + "\n";
    }

    private void write(BookFit book, BookFit.Line line) throws IOException {
        json.writeStartObject();
        json.writeStringField("instrument", line.instrument().id());
        json.writeNumberField("tunes", book.tunes());
        json.writeNumberField("plays", line.plays());
        json.writeNumberField("asWritten", line.asWritten());
        json.writeNumberField("bestFor", line.bestFor());
        json.writeObjectFieldStart("keys");
        for (Map.Entry<String, Integer> key : line.keys().entrySet()) {
            json.writeNumberField(key.getKey(), key.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
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
