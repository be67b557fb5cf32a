package org.bellowscribe.page;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.UnlikePlay;

/**
 * What there is to say about single notes and measures: held reversals, stand-ins of the left hand, measures played unlike
 * their equals. Each line knows its note, so that the script can show it where that note is looked at.
 */
final class AboutSection {

    private final DecidedTune tune;
    private final Whereabouts places;

    AboutSection(DecidedTune tune) {
        this.tune = tune;
        places = new Whereabouts(tune.tune());
    }

    /** Returns the section's content; empty if there is nothing to say. */
    String html() {
        return list("Held while the bellows turn", held())
                + list("The left hand stands in", standIns())
                + list("Unlike their equals", unlike());
    }

    private static String list(String title, List<String> lines) {
        return lines.isEmpty()
                ? ""
                : "<h3>%s</h3>\n<ul class=\"about\">\n%s\n</ul>\n".formatted(title, String.join("\n", lines));
    }

    private List<String> held() {
        List<String> lines = new ArrayList<>();
        for (Step step : tune.solution().steps()) {
            if (step.held()) {
                lines.add(line(
                        step,
                        "a button stays down while the bellows turn to "
                                + step.direction().label()));
            }
        }
        return lines;
    }

    private List<String> standIns() {
        List<String> lines = new ArrayList<>();
        for (Step step : tune.solution().steps()) {
            for (LeftHandPlay play : step.leftHand()) {
                LeftHandFit fit = play.fit();
                if (fit == LeftHandFit.SILENT) {
                    lines.add(line(step, "the left hand is silent where %s is wanted".formatted(play.wantedLabel())));
                } else if (fit != LeftHandFit.EXACT && play.sound() != null) {
                    lines.add(
                            line(step, "%s for %s, %s".formatted(play.sound().label(), play.wantedLabel(), why(fit))));
                }
            }
        }
        return lines;
    }

    private static String why(LeftHandFit fit) {
        return switch (fit) {
            case PLAIN_ROOT -> "the root instead of another note of the chord";
            case OTHER_KIND -> "the same root in another form";
            case FIFTH -> "the bass of the fifth";
            case RELATIVE, RELATIVE_MINOR -> "the relative chord";
            case WITH_MELODY -> "it has the melody note";
            default -> "as wanted";
        };
    }

    private List<String> unlike() {
        List<String> lines = new ArrayList<>();
        for (UnlikePlay play : tune.solution().unlike()) {
            Integer dearer = play.dearer();
            String price = dearer == null
                    ? "no such marks were found"
                    : "the same would cost %d %s more".formatted(dearer, dearer == 1 ? "point" : "points");
            lines.add("<li data-measure=\"%d\">%s is not played as %s: %s</li>"
                    .formatted(play.measure(), measure(play.measure()), measure(play.fellow()), price));
        }
        return lines;
    }

    private String measure(int index) {
        return "<a href=\"#m%d\">measure %s</a>"
                .formatted(index + 1, Html.text(places.measures().get(index)));
    }

    private String line(Step step, String words) {
        int event = step.event().index();
        return "<li data-step=\"%d\"><a href=\"#s%d\">%s</a>: %s</li>"
                .formatted(event, event, Html.text(places.name(event)), Html.text(words));
    }
}
