package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.lefthand.LeftHandFingers;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;

/** Writes the steps of a record. Onsets count from the start of the measure in which the step begins. */
final class StepWriter {

    private final JsonGenerator json;
    private final Tune tune;
    private final LeftHandFingers leftHandFingers;

    StepWriter(JsonGenerator json, Tune tune, LeftHandFingers leftHandFingers) {
        this.json = json;
        this.tune = tune;
        this.leftHandFingers = leftHandFingers;
    }

    void write(List<Step> steps) throws IOException {
        for (Step step : steps) {
            json.writeStartObject();
            writeEvent(step);
            writeRightHand(step);
            json.writeStringField("direction", step.direction().label());
            json.writeBooleanField("held", step.held());
            writeLeftHand(step);
            json.writeStringField("air", step.air().label());
            json.writeEndObject();
        }
    }

    private void writeEvent(Step step) throws IOException {
        Event event = step.event();
        Measure measure = tune.measureOf(event);
        json.writeNumberField("id", event.index());
        json.writeNumberField("measure", measure.index() + 1);
        json.writeStringField("measureNumber", measure.number());
        json.writeStringField("onset", event.onset().toString());
        json.writeStringField("duration", event.duration().toString());
        json.writeArrayFieldStart("pitches");
        // A melody that is not played has no buttons, and nothing sounds.
        for (Pitch pitch : step.buttons().isEmpty() ? List.<Pitch>of() : event.pitches()) {
            json.writeNumber(pitch.midiNumber());
        }
        json.writeEndArray();
    }

    private void writeRightHand(Step step) throws IOException {
        json.writeArrayFieldStart("buttons");
        for (Button button : step.buttons()) {
            json.writeString(button.id());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("fingers");
        for (int finger : step.fingers()) {
            json.writeNumber(finger);
        }
        json.writeEndArray();
        json.writeNumberField("handOn", step.handOn());
    }

    private void writeLeftHand(Step step) throws IOException {
        json.writeArrayFieldStart("leftHand");
        for (int i = 0; i < step.leftHand().size(); i++) {
            LeftHandPlay play = step.leftHand().get(i);
            LeftHandSound sound = play.sound();
            LeftHandButton button = play.button();
            json.writeStartObject();
            json.writeStringField(
                    "onset", step.event().onset().plus(play.wanted().offset()).toString());
            json.writeStringField("duration", play.wanted().duration().toString());
            json.writeStringField("kind", (sound == null ? play.wanted().kind() : sound.kind()).label());
            // A null string becomes a JSON null.
            json.writeStringField("name", sound == null ? null : sound.label());
            json.writeStringField("wanted", play.wantedLabel());
            json.writeStringField("fit", play.fit().label());
            json.writeStringField("button", button == null ? null : button.id());
            json.writeFieldName("finger");
            if (button == null) {
                json.writeNull();
            } else {
                json.writeNumber(leftHandFingers.finger(step, i));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
