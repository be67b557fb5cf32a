package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonFactory;
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

    private static final JsonFactory FACTORY = new JsonFactory();

    private final int best;
    private boolean first = true;

    /**
     * Creates the writer.
     *
     * @param best how many trials of a tune to write; 0 for all
     */
    public FitJson(int best) {
        this.best = best;
    }

    @FunctionalInterface
    private interface Content {
        void write(JsonGenerator json) throws IOException;
    }

    @Override
    public String begin() {
        return "{\"fitVersion\": 1, \"tunes\": [";
    }

    @Override
    public String tune(TuneFit fit) {
        String before = first ? "\n" : ",\n";
        first = false;
        return before
                + object(json -> {
                    json.writeStringField("file", fit.file());
                    json.writeStringField("title", fit.tune().title());
                    json.writeStringField(
                            "key", fit.tune().measures().get(0).key().name());
                    Map<Integer, String> keys = fit.keyNames();
                    json.writeArrayFieldStart("trials");
                    int count = best == 0
                            ? fit.trials().size()
                            : Math.min(best, fit.trials().size());
                    for (Trial trial : fit.trials().subList(0, count)) {
                        write(json, trial, keys.getOrDefault(trial.semitones(), ""));
                    }
                    json.writeEndArray();
                });
    }

    private static void write(JsonGenerator json, Trial trial, String key) throws IOException {
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
        StringBuilder lines = new StringBuilder("\n], \"book\": [");
        String before = "\n";
        for (BookFit.Line line : book.lines()) {
            lines.append(before).append(object(json -> {
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
            }));
            before = ",\n";
        }
        return lines.append("\n]}\n").toString();
    }

    private static String object(Content content) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            content.write(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
