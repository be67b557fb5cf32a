package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;
import org.bellowscribe.guess.Guesses;
import org.bellowscribe.guess.RuleOfThumb;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.lefthand.LeftHandFingers;
import org.bellowscribe.lefthand.LeftHandTally;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.solver.Cost;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.UnlikePlay;

/**
 * Writes a record: every decision of a tune as JSON, in the form of {@code schemas/record.schema.json}. The same record
 * always becomes the same text.
 */
public final class RecordWriter {

    /** Raised when the meaning of a key changes. */
    static final int VERSION = 1;

    // Far finer than any quantity means, and coarse enough to hide the last binary digits.

    private final JsonGenerator json;
    private final Grading grading;

    private RecordWriter(JsonGenerator json, Grading grading) {
        this.json = json;
        this.grading = grading;
    }

    /** Returns the record as JSON, with the usual grading. */
    public static String write(TuneRecord tuneRecord) {
        return write(tuneRecord, GradingLibrary.usual());
    }

    /**
     * Returns the record as JSON, ending in a line end.
     *
     * @param grading by which the tune gets its grade
     */
    public static String write(TuneRecord tuneRecord, Grading grading) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JsonLines.into(text)) {
            new RecordWriter(json, grading).writeRecord(tuneRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private void writeRecord(TuneRecord tuneRecord) throws IOException {
        json.writeStartObject();
        json.writeNumberField("recordVersion", VERSION);
        json.writeStringField("file", tuneRecord.file());
        if (tuneRecord instanceof TuneRecord.Marked marked) {
            writeMarked(marked.tune());
        } else if (tuneRecord instanceof TuneRecord.Unmarked unmarked) {
            json.writeStringField("outcome", unmarked.empty() ? "nothing-to-mark" : "refused");
            json.writeStringField("instrument", unmarked.instrument());
        }
        writeDiagnostics(tuneRecord.diagnostics());
        json.writeEndObject();
    }

    private void writeMarked(DecidedTune marked) throws IOException {
        json.writeStringField("title", marked.tune().title());
        json.writeStringField("outcome", "marked");
        json.writeStringField("instrument", marked.instrument().id());
        json.writeStringField("manner", marked.manner());
        json.writeNumberField("transposedBy", marked.transposedBy());
        json.writeBooleanField("notesKept", marked.notesKept());
        json.writeStringField("part", marked.tune().part());
        json.writeNumberField(
                "quartersPerMinute", Decimals.plain(marked.tune().tempo().quartersPerMinute()));
        json.writeStringField("playOrder", marked.tune().playOrder().shortForm());
        List<Sounding> performance = Performance.of(marked.tune(), marked.instrument(), marked.solution());
        writeBellows(marked.instrument(), marked.solution(), performance);
        json.writeArrayFieldStart("steps");
        LeftHandFingers leftHand = LeftHandFingers.of(marked.tune(), marked.solution());
        new StepWriter(json, marked.tune(), leftHand).write(marked.solution().steps());
        json.writeEndArray();
        writeLeftHand(leftHand);
        writeTally(LeftHandTally.of(marked.instrument(), marked.solution()));
        writePerformance(performance);
        new DifficultyWriter(json, marked.tune()).write(Difficulty.of(marked, grading));
        writeCost(marked.solution().cost());
        writeUnlike(marked.solution().unlike());
        writeGuesses(Guesses.of(marked));
        new CauseWriter(json).write(marked.airCauses());
        new SteeringWriter(json).write(marked.steered());
    }

    private void writeBellows(Instrument instrument, Solution solution, List<Sounding> performance) throws IOException {
        Bellows bellows = instrument.bellows();
        json.writeObjectFieldStart("bellows");
        json.writeNumberField("capacity", Decimals.real(bellows.capacity()));
        json.writeNumberField("lowest", Decimals.real(bellows.lowest()));
        json.writeNumberField("highest", Decimals.real(bellows.highest()));
        json.writeNumberField(
                "openingAtStart",
                Decimals.real(performance.isEmpty() ? 0 : performance.get(0).openingBefore()));
        json.writeBooleanField("again", solution.again());
        json.writeNumberField("lightAirFlow", Decimals.real(bellows.lightAirFlow()));
        json.writeNumberField("fullAirFlow", Decimals.real(bellows.fullAirFlow()));
        json.writeNumberField("loudnessSlack", Decimals.real(instrument.air().loudnessSlack()));
        json.writeEndObject();
    }

    private void writeLeftHand(LeftHandFingers fingers) throws IOException {
        json.writeObjectFieldStart("leftHandFingers");
        json.writeNumberField("points", fingers.points());
        json.writeBooleanField("least", fingers.least());
        json.writeNumberField("columnJumps", fingers.columnJumps());
        json.writeNumberField("sameFinger", fingers.sameFinger());
        json.writeNumberField("handMoves", fingers.handMoves());
        json.writeNumberField("thumbPresses", fingers.thumbPresses());
        json.writeEndObject();
    }

    private void writeGuesses(Guesses guesses) throws IOException {
        json.writeObjectFieldStart("guesses");
        json.writeNumberField("right", guesses.rate().right());
        json.writeNumberField("notes", guesses.rate().all());
        json.writeArrayFieldStart("rules");
        for (Map.Entry<RuleOfThumb, Guesses.Rate> rule : guesses.byRule().entrySet()) {
            json.writeStartObject();
            json.writeStringField("rule", rule.getKey().words());
            json.writeNumberField("right", rule.getValue().right());
            json.writeNumberField("notes", rule.getValue().all());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void writeTally(LeftHandTally tally) throws IOException {
        json.writeObjectFieldStart("leftHandSounds");
        json.writeNumberField("wanted", tally.wanted());
        json.writeNumberField("asWanted", tally.asWanted());
        json.writeNumberField("standIns", tally.standIns());
        json.writeNumberField("silent", tally.silent());
        json.writeNumberField("onOtherButton", tally.onOtherButton());
        json.writeEndObject();
    }

    private void writePerformance(List<Sounding> performance) throws IOException {
        json.writeArrayFieldStart("performance");
        for (Sounding sounding : performance) {
            json.writeStartObject();
            json.writeNumberField("step", sounding.step());
            json.writeNumberField("pass", sounding.pass());
            json.writeNumberField("seconds", Decimals.real(sounding.seconds()));
            json.writeNumberField("flow", Decimals.real(sounding.flow()));
            json.writeNumberField("nominalFlow", Decimals.real(sounding.nominalFlow()));
            json.writeNumberField("airTaken", Decimals.real(sounding.airTaken()));
            json.writeNumberField("openingBefore", Decimals.real(sounding.openingBefore()));
            json.writeNumberField("openingAfter", Decimals.real(sounding.openingAfter()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void writeCost(Cost cost) throws IOException {
        json.writeObjectFieldStart("cost");
        json.writeNumberField("total", cost.total());
        json.writeNumberField("lowerBound", cost.lowerBound());
        json.writeBooleanField("proved", cost.isProved());
        json.writeObjectFieldStart("equalMeasuresApart");
        json.writeNumberField("total", cost.apart().total());
        json.writeNumberField("lowerBound", cost.apart().lowerBound());
        json.writeBooleanField("proved", cost.apart().isProved());
        json.writeEndObject();
        json.writeObjectFieldStart("byRule");
        for (Map.Entry<String, Integer> rule : cost.byRule().entrySet()) {
            json.writeNumberField(rule.getKey(), rule.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void writeUnlike(List<UnlikePlay> unlike) throws IOException {
        json.writeArrayFieldStart("unlikeMeasures");
        for (UnlikePlay measure : unlike) {
            json.writeStartObject();
            json.writeNumberField("measure", measure.measure() + 1);
            json.writeNumberField("equalTo", measure.fellow() + 1);
            Integer dearer = measure.dearer();
            if (dearer != null) {
                json.writeNumberField("dearer", dearer);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void writeDiagnostics(List<Diagnostic> diagnostics) throws IOException {
        json.writeArrayFieldStart("diagnostics");
        for (Diagnostic diagnostic : diagnostics) {
            json.writeStartObject();
            json.writeStringField("severity", diagnostic.severity().label());
            json.writeStringField("code", diagnostic.code().id());
            json.writeNumberField("measure", diagnostic.place().measure());
            json.writeStringField("text", diagnostic.text());
            json.writeArrayFieldStart("advice");
            for (String sentence : diagnostic.advice()) {
                json.writeString(sentence);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
