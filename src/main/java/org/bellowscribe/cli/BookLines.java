package org.bellowscribe.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.bellowscribe.batch.RunLine;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.diagnostic.Diagnostic;

/**
 * Lines of JSON about a book file itself: one for each thing that is wrong with it, and a last one.
 *
 * @param command the command that reads it
 */
record BookLines(String command) {

    /** Prints all that is wrong with it. */
    void wrong(List<Sources.Problem> problems, Terminal terminal) {
        problems.forEach(problem -> print(terminal, "input", json -> {
            json.writeStringField("file", problem.input());
            RunLine.remarks(json, List.of(problem.diagnostic()));
        }));
        end(problems, List.of(), terminal);
    }

    /**
     * Prints the last line.
     *
     * @param problems what is wrong with it
     * @param editions what can be made of it
     */
    void end(List<Sources.Problem> problems, List<LoadedBook.Planned> editions, Terminal terminal) {
        print(terminal, "end", json -> {
            json.writeNumberField("done", problems.isEmpty() ? 1 : 0);
            for (String none : List.of("unchanged", "toDo", "outOfDate")) {
                json.writeNumberField(none, 0);
            }
            json.writeNumberField("refused", problems.isEmpty() ? 0 : 1);
            json.writeArrayFieldStart("refusals");
            if (!problems.isEmpty()) {
                refusal(json, problems.get(0).diagnostic());
            }
            json.writeEndArray();
            json.writeNumberField("errors", problems.size());
            json.writeArrayFieldStart("editions");
            for (LoadedBook.Planned edition : editions) {
                edition(json, edition);
            }
            json.writeEndArray();
        });
    }

    private static void refusal(JsonGenerator json, Diagnostic first) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", first.code().id());
        json.writeNumberField("count", 1);
        json.writeStringField("reason", first.text());
        json.writeStringField("wayOut", String.join(" ", first.advice()));
        json.writeEndObject();
    }

    private static void edition(JsonGenerator json, LoadedBook.Planned edition) throws IOException {
        json.writeStartObject();
        json.writeStringField("edition", edition.entry().folder());
        json.writeStringField("instrument", edition.instrument().name());
        json.writeNumberField("tunes", edition.tunes().size());
        json.writeEndObject();
    }

    private void print(Terminal terminal, String event, RunLine.Content content) {
        terminal.out().println(RunLine.of(event, json -> {
            json.writeStringField("command", command);
            content.write(json);
        }));
    }
}
