package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.bellowscribe.cause.AirCause;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.solver.explain.Explanation;

/** Writes into a record why the air button is pressed. */
final class CauseWriter {

    private final JsonGenerator json;
    private final SteeringWriter steering;

    CauseWriter(JsonGenerator json) {
        this.json = json;
        steering = new SteeringWriter(json);
    }

    void write(List<AirCause> causes) throws IOException {
        json.writeArrayFieldStart("airCauses");
        for (AirCause cause : causes) {
            json.writeStartObject();
            json.writeNumberField("step", cause.event());
            json.writeNumberField("moved", Decimals.real(cause.moved()));
            AirCause.RunsOut runsOut = cause.runsOut();
            if (runsOut != null) {
                write(runsOut);
            }
            Explanation.Candidate instead = cause.instead();
            if (instead != null) {
                json.writeFieldName("instead");
                steering.write(instead);
            }
            json.writeStringField("text", cause.text());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void write(AirCause.RunsOut runsOut) throws IOException {
        json.writeObjectFieldStart("runsOut");
        json.writeStringField("end", runsOut.end() == WithoutAir.End.CLOSED ? "closed" : "wide-open");
        json.writeNumberField("step", runsOut.event());
        json.writeNumberField("pass", runsOut.pass());
        json.writeNumberField("playing", runsOut.playing());
        json.writeEndObject();
    }
}
