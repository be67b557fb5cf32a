package org.bellowscribe.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.RunLine;
import org.bellowscribe.batch.Sources;

/** One line of JSON for each file, each input that gave nothing, and the run; remarks stand in the lines. */
final class JsonReport implements Report {

    private final String command;
    private final boolean needsPins;
    private final Extra extra;

    /** What a command has in its lines that others have not. */
    interface Extra {

        /** Adds to the line of a file. */
        default void tune(JsonGenerator json, Result result) throws IOException {
            // Mostly nothing.
        }

        /** Adds to the last line. */
        default void end(JsonGenerator json) throws IOException {
            // Mostly nothing.
        }
    }

    /**
     * Creates a report.
     *
     * @param needsPins true if pins beside the scores count
     * @param extra what only this command has
     */
    JsonReport(String command, boolean needsPins, Extra extra) {
        this.command = command;
        this.needsPins = needsPins;
        this.extra = extra;
    }

    @Override
    public boolean needsPins() {
        return needsPins;
    }

    @Override
    public boolean holdsRemarks() {
        return true;
    }

    @Override
    public void begin(Terminal terminal) {
        // Lines need no heading.
    }

    @Override
    public void each(Result result, Terminal terminal) {
        print(terminal, "tune", json -> {
            RunLine.result(json, result);
            extra.tune(json, result);
        });
    }

    @Override
    public void problem(Sources.Problem problem, Terminal terminal) {
        print(terminal, "input", json -> {
            json.writeStringField("file", problem.input());
            RunLine.remarks(json, List.of(problem.diagnostic()));
        });
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        print(terminal, "end", json -> {
            json.writeNumberField("done", Report.count(results, Result.Outcome.DONE));
            json.writeNumberField("unchanged", Report.count(results, Result.Outcome.UNCHANGED));
            json.writeNumberField("toDo", Report.count(results, Result.Outcome.TO_DO));
            json.writeNumberField("outOfDate", Report.count(results, Result.Outcome.OUT_OF_DATE));
            json.writeNumberField("refused", refusals.count());
            json.writeArrayFieldStart("refusals");
            for (Refusals.Group group : refusals.groups()) {
                json.writeStartObject();
                json.writeStringField("code", group.code().id());
                json.writeNumberField("count", group.names().size());
                json.writeStringField("reason", group.reason());
                json.writeStringField("wayOut", group.wayOut());
                json.writeEndObject();
            }
            json.writeEndArray();
            extra.end(json);
        });
    }

    private void print(Terminal terminal, String event, RunLine.Content content) {
        terminal.out().println(RunLine.of(event, json -> {
            json.writeStringField("command", command);
            content.write(json);
        }));
    }
}
