package org.bellowscribe.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Base64;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.lefthand.Voicing;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.PlayedMeasure;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;
import org.bellowscribe.theory.Pitch;

/**
 * What a page hands to its script, as a script of its own: pages that are opened from disk may load nothing else. Musical
 * times are in quarter notes, pitches MIDI numbers (60 is C4).
 *
 * <p>{@code steps}, in the order of the score: measure from 0, onset in it, duration, 0 pushed or 1 pulled, pitches, buttons,
 * air (0 none, 1 light, 2 full), left hand (time from the onset, duration, pitches, button), 1 if it only sounds on from the
 * step before. {@code plays}, in the order of play: steps. {@code measures}: name, length, pulse, length of a full one, where in the
 * full one it begins. {@code order}: measures as they are played, each with which playing of it this is and its first play. {@code voices}: for each reed of a button its octave.
 */
final class TuneScript {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final int DECIMALS = 5;

    private final TunePage page;
    private final Tune tune;
    private final JsonGenerator json;

    private TuneScript(TunePage page, JsonGenerator json) {
        this.page = page;
        this.tune = page.tune().tune();
        this.json = json;
    }

    /** Returns the script of a page. */
    static String of(TunePage page) {
        StringWriter text = new StringWriter();
        text.write("window.bellowscribe=");
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            new TuneScript(page, json).write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append(";\n").toString();
    }

    private void write() throws IOException {
        DecidedTune decided = page.tune();
        json.writeStartObject();
        json.writeNumberField("quarters", plain(tune.tempo().quartersPerMinute()));
        json.writeArrayFieldStart("voices");
        for (int octave : decided.instrument().air().voices()) {
            json.writeNumber(octave);
        }
        json.writeEndArray();
        writeMeasures();
        json.writeArrayFieldStart("steps");
        for (Step step : decided.solution().steps()) {
            writeStep(step);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("plays");
        for (int event : tune.eventOrder()) {
            json.writeNumber(event);
        }
        json.writeEndArray();
        json.writeStringField("score", Base64.getEncoder().encodeToString(page.score()));
        json.writeEndObject();
    }

    private void writeMeasures() throws IOException {
        List<PlayedMeasure> played = PlayedMeasure.of(
                tune, Performance.of(tune, page.tune().instrument(), page.tune().solution()));
        List<String> numbers = new Whereabouts(tune).measures();
        json.writeArrayFieldStart("measures");
        for (Measure measure : tune.measures()) {
            json.writeStartArray();
            json.writeString(numbers.get(measure.index()));
            json.writeNumber(plain(measure.length()));
            json.writeNumber(plain(measure.time().pulse()));
            json.writeNumber(plain(measure.time().measureLength()));
            json.writeNumber(plain(measure.beatOffset()));
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("order");
        for (PlayedMeasure measure : played) {
            json.writeStartArray();
            json.writeNumber(measure.measure());
            json.writeString(measure.time());
            json.writeNumber(measure.first());
            json.writeEndArray();
        }
        json.writeEndArray();
    }

    private void writeStep(Step step) throws IOException {
        json.writeStartArray();
        json.writeNumber(step.event().measure());
        json.writeNumber(plain(step.event().onset()));
        json.writeNumber(plain(step.event().duration()));
        json.writeNumber(step.direction() == BellowsDirection.PUSH ? 0 : 1);
        json.writeStartArray();
        // A melody that is not played has no buttons, and nothing sounds.
        for (Pitch pitch :
                step.buttons().isEmpty() ? List.<Pitch>of() : step.event().pitches()) {
            json.writeNumber(pitch.midiNumber());
        }
        json.writeEndArray();
        json.writeStartArray();
        for (Button button : step.buttons()) {
            json.writeString(button.id());
        }
        json.writeEndArray();
        json.writeNumber(amount(step.air()));
        json.writeStartArray();
        for (LeftHandPlay play : step.leftHand()) {
            writeStroke(play);
        }
        json.writeEndArray();
        json.writeNumber(step.event().heldOver() ? 1 : 0);
        json.writeEndArray();
    }

    private void writeStroke(LeftHandPlay play) throws IOException {
        LeftHandSound sound = play.sound();
        LeftHandButton button = play.button();
        if (sound == null || button == null) {
            return;
        }
        json.writeStartArray();
        json.writeNumber(plain(play.wanted().offset()));
        json.writeNumber(plain(play.wanted().duration()));
        json.writeStartArray();
        for (NoteName note : Voicing.notes(sound, 0, 0)) {
            json.writeNumber(note.midiNumber());
        }
        json.writeEndArray();
        json.writeString(button.id());
        json.writeEndArray();
    }

    private static int amount(AirUse air) {
        return switch (air) {
            case NONE -> 0;
            case LIGHT -> 1;
            case FULL -> 2;
        };
    }

    private static BigDecimal plain(Fraction time) {
        return plain(time.toDouble());
    }

    private static BigDecimal plain(double value) {
        BigDecimal plain =
                new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
