package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.solver.Cost;

/** What fits have in every JSON of ours. */
public final class FitValues {

    private FitValues() {}

    /**
     * Writes the trials of a tune as the array {@code trials}.
     *
     * @param best how many of them; 0 for all
     */
    public static void trials(JsonGenerator json, TuneFit fit, int best) throws IOException {
        Map<Integer, String> keys = fit.keyNames();
        json.writeArrayFieldStart("trials");
        int count =
                best == 0 ? fit.trials().size() : Math.min(best, fit.trials().size());
        for (Trial trial : fit.trials().subList(0, count)) {
            write(json, trial, keys.getOrDefault(trial.semitones(), ""));
        }
        json.writeEndArray();
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

    /** Writes what every instrument plays of all tunes as the array {@code book}. */
    public static void book(JsonGenerator json, BookFit book) throws IOException {
        json.writeArrayFieldStart("book");
        for (BookFit.Line line : book.lines()) {
            write(json, book, line);
        }
        json.writeEndArray();
    }

    private static void write(JsonGenerator json, BookFit book, BookFit.Line line) throws IOException {
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
}
