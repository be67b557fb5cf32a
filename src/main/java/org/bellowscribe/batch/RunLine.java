package org.bellowscribe.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.lefthand.LeftHandTally;
import org.bellowscribe.report.TuneSummary;
import org.bellowscribe.solver.Cost;

/** What became of a file as one line of JSON, in the form of {@code schemas/run.schema.json}. */
public final class RunLine {

    /** Raised when the meaning of a key changes. */
    private static final int VERSION = 1;

    private static final JsonFactory FACTORY = new JsonFactory();

    private RunLine() {}

    /** Something to write into a line. */
    @FunctionalInterface
    public interface Content {

        /** Writes keys with their values. */
        void write(JsonGenerator json) throws IOException;
    }

    /**
     * Returns a line.
     *
     * @param event what it is about: {@code tune}, {@code input} or {@code end}
     */
    public static String of(String event, Content content) {
        return object(json -> {
            json.writeNumberField("runVersion", VERSION);
            json.writeStringField("event", event);
            content.write(json);
        });
    }

    /** Returns an object on one line. */
    static String object(Content content) {
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

    /** Writes what became of a file: where it is, then everything that does not depend on where that is. */
    public static void result(JsonGenerator json, Result result) throws IOException {
        json.writeStringField("file", result.source().shown());
        json.writeStringField("outcome", result.outcome().id());
        json.writeStringField("result", result.source().target().toString());
        body(json, result);
    }

    /** Writes what is known of a tune wherever it lies. */
    static void body(JsonGenerator json, Result result) throws IOException {
        json.writeStringField("title", result.title());
        TuneSummary summary = result.summary();
        if (summary != null) {
            json.writeObjectFieldStart("figures");
            figures(json, summary);
            json.writeEndObject();
        }
        texts(json, "told", result.told());
        remarks(json, result.diagnostics());
    }

    private static void figures(JsonGenerator json, TuneSummary summary) throws IOException {
        json.writeNumberField("measures", summary.measures());
        json.writeNumberField("reversals", summary.reversals());
        json.writeNumberField("airMarks", summary.airMarks());
        json.writeNumberField("startPercent", summary.startPercent());
        Cost cost = summary.cost();
        json.writeNumberField("cost", cost.total());
        json.writeNumberField("leastCost", cost.lowerBound());
        LeftHandTally leftHand = summary.leftHand();
        json.writeNumberField("leftHandAsWanted", leftHand.asWanted());
        json.writeNumberField("leftHandStandIns", leftHand.standIns());
        json.writeNumberField("leftHandSilent", leftHand.silent());
        json.writeNumberField("leftHandOnTwinButtons", leftHand.onOtherButton());
        json.writeStringField("playOrder", summary.playOrder());
        json.writeStringField("key", summary.key());
    }

    /** Writes remarks as the array {@code remarks}. */
    public static void remarks(JsonGenerator json, List<Diagnostic> remarks) throws IOException {
        json.writeArrayFieldStart("remarks");
        for (Diagnostic remark : remarks) {
            json.writeStartObject();
            json.writeStringField("severity", remark.severity().label());
            json.writeStringField("code", remark.code().id());
            place(json, remark.place());
            json.writeStringField("text", remark.text());
            texts(json, "advice", remark.advice());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void place(JsonGenerator json, Place place) throws IOException {
        json.writeNumberField("measure", place.measure());
        json.writeStringField("measureNumber", place.measureNumber());
        json.writeStringField("part", place.part());
        json.writeNumberField("line", place.line());
        json.writeNumberField("column", place.column());
    }

    private static void texts(JsonGenerator json, String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
