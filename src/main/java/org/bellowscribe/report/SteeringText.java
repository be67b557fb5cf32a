package org.bellowscribe.report;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.explain.Comparison;
import org.bellowscribe.solver.explain.Explanation;
import org.bellowscribe.solver.explain.PinPrice;
import org.bellowscribe.theory.Pitch;

/** Tells people what pins cost and why marks are as they are: lines to be printed under the line of the tune. */
public final class SteeringText {

    /** A pin of so many points is told: more than a reversal with time to spare. */
    static final int DEAR = 5;

    private static final String CANDIDATE = "    %-34s %6s  %s";

    private SteeringText() {}

    /** Returns one line on all pins, and one for each that is dear; none if there are no pins. */
    public static List<String> ofPins(Tune tune, List<PinPrice> prices) {
        if (prices.isEmpty()) {
            return List.of();
        }
        Whereabouts places = new Whereabouts(tune);
        List<String> lines = new ArrayList<>();
        for (PinPrice price : prices) {
            if (price.lastsOnce() || price.comparison().points() >= DEAR) {
                lines.add("    %s (%s): %s"
                        .formatted(
                                places.name(price.pin().event()),
                                price.pin().describe(),
                                price.lastsOnce()
                                        ? "because of it the marks are for one time through"
                                        : points(price.comparison()) + " points: "
                                                + price.comparison().describe()));
            }
        }
        String count = prices.size() == 1 ? "1 pin kept" : prices.size() + " pins kept";
        lines.add(0, "  %s%s".formatted(count, lines.isEmpty() ? ", none of them dear" : "; dear:"));
        return lines;
    }

    /**
     * Returns the candidates of the events that were asked about, each with its price and the rules that make it, and why
     * the air button is pressed there.
     */
    public static List<String> ofExplanations(DecidedTune tune) {
        Whereabouts places = new Whereabouts(tune.tune());
        List<String> lines = new ArrayList<>();
        for (Explanation explanation : tune.steered().explanations()) {
            Step step = explanation.step();
            int event = step.event().index();
            lines.add("  %s%s: %s".formatted(places.name(event), pitches(step), played(step)));
            tune.airCauses().stream()
                    .filter(cause -> cause.event() == event)
                    .forEach(cause -> lines.add("    air button: " + cause.text()));
            lines.add(CANDIDATE.formatted("instead", "points", "because, with all else decided anew"));
            explanation.candidates().forEach(candidate -> lines.add(candidate(candidate)));
        }
        return lines;
    }

    private static String candidate(Explanation.Candidate candidate) {
        String words = candidate.pin().describe();
        Comparison comparison = candidate.comparison();
        if (comparison == null) {
            return CANDIDATE.formatted(words, "-", why(candidate.obstacle()));
        }
        String once = candidate.obstacle() == Explanation.Obstacle.ONCE_ONLY ? "for one time through only; " : "";
        String because = comparison.byRule().isEmpty() ? "as good" : comparison.describe();
        return CANDIDATE.formatted(words, points(comparison), once + because);
    }

    private static String why(Explanation.Obstacle obstacle) {
        return switch (obstacle) {
            case PIN -> "a pin asks for something else";
            case MISSING -> "not in the direction of these notes";
            default -> "the bellows do not last so";
        };
    }

    // About, where the least is not known for sure.
    private static String points(Comparison comparison) {
        return "%s%+d".formatted(comparison.proved() ? "" : "~", comparison.points());
    }

    private static String pitches(Step step) {
        List<String> names =
                step.event().pitches().stream().map(Pitch::toString).toList();
        return names.isEmpty() ? "" : " (" + String.join("+", names) + ")";
    }

    private static String played(Step step) {
        Pin pin = Pin.at(step.event().index()).direction(step.direction());
        for (int i = 0; i < step.buttons().size(); i++) {
            pin = pin.button(i, step.buttons().get(i).id())
                    .finger(i, step.fingers().get(i));
        }
        for (int i = 0; i < step.leftHand().size(); i++) {
            LeftHandPlay play = step.leftHand().get(i);
            pin = pin.leftHand(
                    i, play.sound() == null ? Pin.SILENCE : play.sound().label());
        }
        return pin.handOn(step.handOn()).air(step.air()).describe();
    }
}
