package org.bellowscribe.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;

/** Two ways side by side, a small table for each measure: the notes, and under them what either way plays. */
final class MeasureTables {

    private final Elements html;
    private final ComparedTune tune;
    private final List<String> names;

    MeasureTables(Elements html, ComparedTune tune) {
        this.html = html;
        this.tune = tune;
        names = new Whereabouts(tune.a().tune().tune()).measures();
    }

    /** Writes the tables. */
    void write() {
        Tune score = tune.a().tune().tune();
        List<List<Event>> byMeasure = new ArrayList<>();
        score.measures().forEach(measure -> byMeasure.add(new ArrayList<>()));
        score.events().forEach(event -> byMeasure.get(event.measure()).add(event));
        html.begin("div", "class", "measures");
        for (Measure measure : score.measures()) {
            if (!byMeasure.get(measure.index()).isEmpty()) {
                table(measure, byMeasure.get(measure.index()));
            }
        }
        html.end();
    }

    private void table(Measure measure, List<Event> events) {
        boolean differs = events.stream()
                .anyMatch(event -> !Cell.of(step(tune.a(), event)).equals(Cell.of(step(tune.b(), event))));
        html.begin("table", "class", differs ? "differs" : "same")
                .leaf("caption", "Measure " + names.get(measure.index()));
        html.begin("thead").begin("tr").leaf("th", "note", "scope", "row");
        events.forEach(event -> html.leaf("th", name(event), "scope", "col"));
        html.end().end().begin("tbody");
        row("A", events, tune.a(), tune.b());
        row("B", events, tune.b(), tune.a());
        html.end().end();
    }

    private void row(String letter, List<Event> events, ComparedTune.Side side, ComparedTune.Side other) {
        html.begin("tr").leaf("th", letter, "scope", "row");
        for (Event event : events) {
            html.begin("td");
            Cell played = Cell.of(step(side, event));
            for (Cell.Line line : played.lines(Cell.of(step(other, event)))) {
                html.begin("div")
                        .leaf(line.differs() ? "mark" : "span", line.words())
                        .end();
            }
            html.end();
        }
        html.end();
    }

    private static Step step(ComparedTune.Side side, Event event) {
        return side.tune().solution().steps().get(event.index());
    }

    private static String name(Event event) {
        String pitches = event.pitches().stream().map(Pitch::toString).collect(Collectors.joining("+"));
        return event.isRest() ? "rest" : event.heldOver() ? pitches + " held" : pitches;
    }
}
