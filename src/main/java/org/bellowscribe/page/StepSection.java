package org.bellowscribe.page;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;

/** The table of all marks in words, one row for each note group and rest; the script chooses notes by its rows. */
final class StepSection {

    private final DecidedTune tune;
    private final List<String> numbers;
    private final double percent;

    StepSection(DecidedTune tune) {
        this.tune = tune;
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
            table.append(
                    "<tr id=\"s%d\"><th scope=\"row\"><a href=\"#s%d\">%s:%d</a></th><td>%s</td><td>%d&nbsp;%%</td></tr>\n"
                            .formatted(
                                    event.index(),
                                    event.index(),
                                    Html.text(numbers.get(measure)),
                                    place,
                                    Html.text(words(step)),
                                    Math.round(step.openingBefore() * percent)));
        }
        return table.append(measure < 0 ? "" : "</tbody>")
                .append("</table></div>\n")
                .toString();
    }

    private static String words(Step step) {
        List<String> words = new ArrayList<>();
        words.add(
                step.event().isRest()
                        ? "rest"
                        : String.join(
                                "+",
                                step.event().pitches().stream()
                                        .map(Pitch::toString)
                                        .toList()));
        words.add(step.direction().label());
        for (int i = 0; i < step.buttons().size(); i++) {
            words.add("button %s, finger %d"
                    .formatted(step.buttons().get(i).id(), step.fingers().get(i)));
        }
        for (LeftHandPlay play : step.leftHand()) {
            words.add(
                    play.sound() == null
                            ? "left hand silent"
                            : "left hand " + play.sound().label());
        }
        if (step.air() != AirUse.NONE) {
            words.add("press air" + (step.air() == AirUse.LIGHT ? " lightly" : ""));
        }
        return String.join(", ", words);
    }
}
