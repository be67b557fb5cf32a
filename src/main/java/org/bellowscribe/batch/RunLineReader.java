package org.bellowscribe.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.lefthand.LeftHandTally;
import org.bellowscribe.report.TuneSummary;
import org.bellowscribe.solver.Cost;
import org.bellowscribe.solver.LeastPoints;
import org.jspecify.annotations.Nullable;

/** Reads back what {@link RunLine} has written of a tune. */
final class RunLineReader {

    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonParser json;
    private String title = "";
    private @Nullable TuneSummary summary;
    private List<String> told = List.of();
    private final List<Diagnostic> remarks = new ArrayList<>();

    private RunLineReader(JsonParser json) {
        this.json = json;
    }

    /** Reads an object; it is of a tune that was marked if it has figures, else of one that was refused. */
    static Result read(String text, Source source) {
        try (JsonParser json = FACTORY.createParser(text)) {
            RunLineReader reader = new RunLineReader(json);
            reader.read();
            Result.Outcome outcome = reader.summary == null ? Result.Outcome.REFUSED : Result.Outcome.DONE;
            return new Result(source, outcome, reader.summary, reader.remarks, reader.told, reader.title);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read() throws IOException {
        json.nextToken();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String key = json.currentName();
            json.nextToken();
            switch (key) {
                case "title" -> title = json.getText();
                case "figures" -> summary = figures(values());
                case "told" -> told = texts();
                case "remarks" -> {
                    while (json.nextToken() == JsonToken.START_OBJECT) {
                        remarks.add(remark());
                    }
                }
                default -> json.skipChildren();
            }
        }
    }

    /** Reads an object of numbers and texts. */
    private Map<String, Object> values() throws IOException {
        Map<String, Object> values = new HashMap<>();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String key = json.currentName();
            boolean number = json.nextToken() == JsonToken.VALUE_NUMBER_INT;
            values.put(key, number ? (Object) json.getIntValue() : json.getText());
        }
        return values;
    }

    private TuneSummary figures(Map<String, Object> values) {
        LeastPoints least = new LeastPoints(number(values, "cost"), number(values, "leastCost"));
        return new TuneSummary(
                title,
                number(values, "measures"),
                number(values, "reversals"),
                number(values, "airMarks"),
                number(values, "startPercent"),
                new Cost(
                        least.total(),
                        least.lowerBound(),
                        Collections.emptySortedMap(),
                        Collections.emptySortedMap(),
                        least),
                new LeftHandTally(
                        number(values, "leftHandAsWanted"),
                        number(values, "leftHandStandIns"),
                        number(values, "leftHandSilent"),
                        number(values, "leftHandOnTwinButtons")),
                String.valueOf(values.get("playOrder")),
                String.valueOf(values.get("key")));
    }

    private static int number(Map<String, Object> values, String key) {
        return values.get(key) instanceof Integer number ? number : 0;
    }

    private List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        while (json.nextToken() == JsonToken.VALUE_STRING) {
            texts.add(json.getText());
        }
        return texts;
    }

    private Diagnostic remark() throws IOException {
        Map<String, Object> values = new HashMap<>();
        List<String> advice = new ArrayList<>();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String key = json.currentName();
            JsonToken token = json.nextToken();
            if (token == JsonToken.START_ARRAY) {
                advice = texts();
            } else {
                values.put(key, token == JsonToken.VALUE_NUMBER_INT ? (Object) json.getIntValue() : json.getText());
            }
        }
        Place place = new Place(
                number(values, "measure"),
                String.valueOf(values.get("measureNumber")),
                String.valueOf(values.get("part")),
                number(values, "line"),
                number(values, "column"));
        return new Diagnostic(
                Severity.valueOf(String.valueOf(values.get("severity")).toUpperCase(Locale.ROOT)),
                DiagnosticCode.valueOf(String.valueOf(values.get("code"))
                        .toUpperCase(Locale.ROOT)
                        .replace('-', '_')),
                place,
                String.valueOf(values.get("text")),
                advice);
    }
}
