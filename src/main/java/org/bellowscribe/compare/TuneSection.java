package org.bellowscribe.compare;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.drawing.BellowsRow;
import org.bellowscribe.report.TuneSummary;

/** The part of the page about one tune. */
final class TuneSection {

    private static final Map<String, String> CHOICES = Map.of(
            "A", "A",
            "B", "B",
            "both", "both are as good",
            "neither", "neither is good");
    private static final List<String> ORDER = List.of("A", "B", "both", "neither");

    private final Elements html;
    private final boolean named;

    /**
     * Creates a writer.
     *
     * @param named true if the page tells what the ways are called
     */
    TuneSection(Elements html, boolean named) {
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
        String different =
                Differences.of(tune).events().stream().map(String::valueOf).collect(Collectors.joining(" "));
        way("A", tune.a(), tune.file(), different);
        way("B", tune.b(), tune.file(), different);
        html.end();
        html.begin("details").leaf("summary", "Note by note");
        html.leaf(
                "p",
                "What differs is marked and in bold. A button is row.number: row 1 is the outer one, button 1 nearest the chin.");
        new MeasureTables(html, tune).write();
        html.end();
    }

    private void way(String letter, ComparedTune.Side side, String file, String different) {
        TuneSummary summary = TuneSummary.of(side.tune());
        html.begin("div", "class", "way");
        html.leaf("h3", named ? "%s: %s".formatted(letter, side.name()) : letter);
        html.leaf(
                "p",
                "Reversals of the bellows in one playing: %d. Air marks: %d. Open at the start: %d %%."
                        .formatted(summary.reversals(), summary.airMarks(), summary.startPercent()));
        String before = ComparedTune.before(file, letter);
        html.begin("div", "class", "engraved", "data-score", before, "data-other", different)
                .leaf("p", "The score is engraved when it comes into view.")
                .end();
        html.begin("div", "class", "strips");
        for (BellowsRow row : BellowsRow.of(side.tune())) {
            html.begin("figure", "class", "strip").drawing(row.svg()).end();
        }
        html.end();
        html.begin("p")
                .leaf("a", "Marked score, way " + letter, "href", side.score(), "download", "")
                .end();
        html.end();
    }

    private void judgement(String id) {
        html.begin("fieldset").leaf("legend", "Which would you rather play, or teach?");
        html.begin("div", "class", "options");
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
