package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.explain.Comparison;
import org.bellowscribe.solver.explain.Explanation;
import org.bellowscribe.solver.explain.PinPrice;

/** Writes pins with their prices, and explanations, into a record. */
final class SteeringWriter {

    private final JsonGenerator json;

    SteeringWriter(JsonGenerator json) {
        this.json = json;
    }

    /** Writes what there is; a record without pins or explanations has no key for them. */
    void write(Steered steered) throws IOException {
        if (!steered.pins().isEmpty()) {
            json.writeArrayFieldStart("pins");
            for (PinPrice price : steered.pins()) {
                json.writeStartObject();
                json.writeNumberField("step", price.pin().event());
                writeFixed(price.pin());
                writeComparison(price.comparison());
                json.writeBooleanField("lastsOnce", price.lastsOnce());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        if (!steered.explanations().isEmpty()) {
            json.writeArrayFieldStart("explanations");
            for (Explanation explanation : steered.explanations()) {
                json.writeStartObject();
                json.writeNumberField("step", explanation.step().event().index());
                writeCandidates(explanation.candidates());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
    }

    private void writeCandidates(List<Explanation.Candidate> candidates) throws IOException {
        json.writeArrayFieldStart("instead");
        for (Explanation.Candidate candidate : candidates) {
            write(candidate);
        }
        json.writeEndArray();
    }

    /** Writes something else that could be played, with its price. */
    void write(Explanation.Candidate candidate) throws IOException {
        json.writeStartObject();
        writeFixed(candidate.pin());
        json.writeStringField(
                "obstacle", candidate.obstacle().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        Comparison comparison = candidate.comparison();
        if (comparison != null) {
            writeComparison(comparison);
        }
        json.writeEndObject();
    }

    private void writeFixed(Pin pin) throws IOException {
        json.writeObjectFieldStart("fixed");
        BellowsDirection direction = pin.direction();
        if (direction != null) {
            json.writeStringField("direction", direction.label());
        }
        writePlaces("buttons", pin.buttons());
        writePlaces("fingers", pin.fingers());
        Integer handOn = pin.handOn();
        if (handOn != null) {
            json.writeNumberField("handOn", handOn);
        }
        writePlaces("leftHand", pin.leftHand());
        AirUse air = pin.air();
        if (air != null) {
            json.writeStringField("air", air.label());
        }
        json.writeEndObject();
    }

    // By the place among the step's pitches or sounds, from 0; silence is null.
    private void writePlaces(String key, Map<Integer, ?> places) throws IOException {
        if (places.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(key);
        for (Map.Entry<Integer, ?> place : places.entrySet()) {
            json.writeFieldName(place.getKey().toString());
            if (place.getValue() instanceof Integer number) {
                json.writeNumber(number);
            } else {
                String text = String.valueOf(place.getValue());
                json.writeString(text.equals(Pin.SILENCE) ? null : text);
            }
        }
        json.writeEndObject();
    }

    private void writeComparison(Comparison comparison) throws IOException {
        json.writeNumberField("points", comparison.points());
        json.writeBooleanField("proved", comparison.proved());
        json.writeObjectFieldStart("byRule");
        for (Map.Entry<String, Comparison.Difference> rule : comparison.byRule().entrySet()) {
            json.writeNumberField(rule.getKey(), rule.getValue().points());
        }
        json.writeEndObject();
    }
}
