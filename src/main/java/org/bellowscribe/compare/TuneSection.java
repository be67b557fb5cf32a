package org.bellowscribe.compare;

import java.util.List;
import java.util.Map;
import org.bellowscribe.report.TuneSummary;

/** The part of the page about one tune. */
final class TuneSection {

    private static final Map<String, String> CHOICES = Map.of(
            "A", "A",
            "B", "B",
            "both", "both are as good",
            "neither", "neither is good");
    private static final List<String> ORDER = List.of("A", "B", "both", "neither");

    private final Html html;
    private final boolean named;

    /**
     * Creates a writer.
     *
     * @param named true if the page tells what the ways are called
     */
    TuneSection(Html html, boolean named) {
        this.html = html;
        this.named = named;
    }

    /**
     * Writes a tune.
     *
     * @param number its place on the page, from 1
     */
    void write(int number, ComparedTune tune) {
        String id = "tune-" + number;
        html.begin(
                "section",
                "id",
                id,
                "class",
                "tune",
                "aria-labelledby",
                id + "-title",
                "data-file",
                tune.file(),
                "data-title",
                tune.title(),
                "data-a",
                named ? tune.a().name() : "",
                "data-b",
                named ? tune.b().name() : "");
        html.leaf("h2", "%d. %s".formatted(number, tune.title()), "id", id + "-title");
        html.leaf("p", Differences.of(tune).words());
        content(tune);
        judgement(id);
        html.end();
    }

    private void content(ComparedTune tune) {
        html.begin("div", "class", "ways");
        way("A", tune.a());
        way("B", tune.b());
        html.end();
        html.begin("details").leaf("summary", "Note by note");
        html.leaf(
                "p",
                "What differs is marked and in bold. A button is row.number: row 1 is the outer one, button 1 nearest the chin.");
        new MeasureTables(html, tune).write();
        html.end();
    }

    private void way(String letter, ComparedTune.Side side) {
        TuneSummary summary = TuneSummary.of(side.tune());
        html.begin("div", "class", "way");
        html.leaf("h3", named ? "%s: %s".formatted(letter, side.name()) : letter);
        html.leaf(
                "p",
                "Reversals of the bellows in one playing: %d. Air marks: %d. Open at the start: %d %%."
                        .formatted(summary.reversals(), summary.airMarks(), summary.startPercent()));
        html.empty("img", "src", side.picture(), "alt", "What the bellows do, way " + letter, "loading", "lazy");
        html.begin("p")
                .leaf("a", "Marked score, way " + letter, "href", side.score(), "download", "")
                .end();
        html.end();
    }

    private void judgement(String id) {
        html.begin("fieldset").leaf("legend", "Which would you rather play, or teach?");
        html.begin("div", "class", "choices");
        for (String choice : ORDER) {
            html.begin("label").empty("input", "type", "radio", "name", id, "value", choice);
            html.words(" " + CHOICES.get(choice)).end();
        }
        html.end();
        html.begin("label", "class", "remark").words("Remark ");
        html.leaf("textarea", "", "name", id + "-remark", "rows", "2", "maxlength", "2000");
        html.end().end();
    }
}
