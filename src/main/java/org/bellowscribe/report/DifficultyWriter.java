package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.TermPoints;
import org.bellowscribe.score.Tune;

/** Writes the difficulty of a tune into its record. */
final class DifficultyWriter {

    private static final int DECIMALS = 4;

    private final JsonGenerator json;
    private final Tune tune;

    DifficultyWriter(JsonGenerator json, Tune tune) {
        this.json = json;
        this.tune = tune;
    }

    void write(Difficulty difficulty) throws IOException {
        json.writeObjectFieldStart("difficulty");
        json.writeStringField("grading", difficulty.grading());
        json.writeNumberField("grade", difficulty.grade().number());
        json.writeStringField("gradeName", difficulty.grade().name());
        json.writeNumberField("points", rounded(difficulty.points()));
        json.writeArrayFieldStart("terms");
        for (TermPoints term : difficulty.terms()) {
            json.writeStartObject();
            json.writeStringField("term", term.term().id());
            json.writeNumberField("figure", rounded(term.figure()));
            json.writeNumberField("weight", rounded(term.weight()));
            json.writeNumberField("points", rounded(term.points()));
            json.writeFieldName("measure");
            if (term.event() < 0) {
                json.writeNull();
            } else {
                json.writeNumber(tune.events().get(term.event()).measure() + 1);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static BigDecimal rounded(double value) {
        return new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
}
