package org.bellowscribe.cause;

import java.util.List;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.explain.Comparison;
import org.bellowscribe.solver.explain.Explanation;
import org.jspecify.annotations.Nullable;

/** The sentences of cause. */
final class CauseWords {

    private static final int PERCENT = 100;
    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");

    private final Tune tune;
    private final Bellows bellows;
    private final List<String> measures;

    CauseWords(Tune tune, Bellows bellows) {
        this.tune = tune;
        this.bellows = bellows;
        measures = new Whereabouts(tune).measures();
    }

    /** Says where the bellows would be at their end in the first playing of the tune. */
    String runsOut(AirCause.RunsOut runsOut) {
        return "Without it the bellows would be %s %s.".formatted(end(runsOut), place(runsOut, "%s of the %s playing"));
    }

    /** Says how the bellows would come back otherwise, and what that would come to. */
    String drifts(double moved, boolean repeated, AirCause.@Nullable RunsOut runsOut) {
        long percent = Math.round(PERCENT * Math.abs(moved) / bellows.capacity());
        String drift = "%s %s open".formatted(percent == 0 ? "a little" : percent + " %", moved > 0 ? "less" : "more");
        String first = repeated
                ? "Without it the repeat would come back %s".formatted(drift)
                : "Without it the tune would end %s than it began".formatted(drift);
        return runsOut == null
                ? first + "."
                : "%s; the %s time the tune is played the bellows would be %s %s."
                        .formatted(
                                first,
                                ordinal(runsOut.playing()),
                                end(runsOut),
                                place(runsOut, "%s, played for the %s time"));
    }

    /** Says what the tune would cost without the press. */
    String price(Explanation.Candidate instead) {
        Comparison comparison = instead.comparison();
        if (comparison == null) {
            return "As marked the bellows would last without it, but no way of playing was found that has none here.";
        }
        if (comparison.points() == 0) {
            return "Without it the bellows would last, and the tune would cost the same.";
        }
        return "Without it the bellows would last, but the tune would cost %s%d points more: %s."
                .formatted(comparison.proved() ? "" : "about ", comparison.points(), comparison.describe());
    }

    private static String end(AirCause.RunsOut runsOut) {
        return runsOut.end() == WithoutAir.End.CLOSED ? "closed" : "wide open";
    }

    private String place(AirCause.RunsOut runsOut, String again) {
        int measure = tune.events().get(runsOut.event()).measure();
        long times = tune.playOrder().measures().stream()
                .filter(each -> each == measure)
                .count();
        boolean clear = times == 1 || (runsOut.playing() > 1 && runsOut.pass() == 1);
        String name = "in measure " + measures.get(measure);
        return clear ? name : again.formatted(name, ordinal(runsOut.pass()));
    }

    private static String ordinal(int number) {
        return number <= ORDINALS.size() ? ORDINALS.get(number - 1) : number + ending(number);
    }

    private static String ending(int number) {
        boolean teens = number / 10 % 10 == 1;
        return switch (teens ? 0 : number % 10) {
            case 1 -> "st";
            case 2 -> "nd";
            case 3 -> "rd";
            default -> "th";
        };
    }
}
