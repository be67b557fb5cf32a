package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Step;
import org.bellowscribe.words.TuneInWords;
import org.bellowscribe.words.WordLine;

/** The table of all marks in words, one row for each note group and rest; the script chooses notes by its rows. */
final class StepSection {

    private final DecidedTune tune;
    private final List<String> numbers;
    private final List<WordLine> lines;
    private final double percent;

    /**
     * Prepares the table.
     *
     * @param style the style whose language is spoken
     */
    StepSection(DecidedTune tune, Style style) {
        this.tune = tune;
        lines = TuneInWords.of(tune, style).lines();
        numbers = new Whereabouts(tune.tune()).measures();
        percent = 0.1 / tune.instrument().bellows().capacity();
    }

    /** Returns the table. */
    String html() {
        StringBuilder table = new StringBuilder("""
                <div class="scroll"><table id="steps"><caption class="vh">Every mark in words</caption><thead><tr><th scope="col">note</th><th scope="col">what is played</th><th scope="col">open</th></tr></thead>
                """);
        int measure = -1;
        int place = 0;
        for (Step step : tune.solution().steps()) {
            Event event = step.event();
            if (event.measure() != measure) {
                table.append(measure < 0 ? "" : "</tbody>\n");
                measure = event.measure();
                place = 0;
                table.append("<tbody id=\"m%d\">\n".formatted(measure + 1));
            }
            place++;
            // HTML lets cells and rows end where the next begin; there are many of them.
            table.append("<tr id=\"s%d\"><th scope=\"row\"><a href=\"#s%d\">%s:%d</a><td>%s<td>%d\u00A0%%\n"
                    .formatted(
                            event.index(),
                            event.index(),
                            Html.text(numbers.get(measure)),
                            place,
                            Html.text(lines.get(event.index()).text()),
                            Math.round(step.openingBefore() * percent)));
        }
        return table.append(measure < 0 ? "" : "</tbody>")
                .append("</table></div>\n")
                .toString();
    }
}
