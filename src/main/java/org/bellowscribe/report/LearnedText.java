package org.bellowscribe.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.learning.Agreement;
import org.bellowscribe.learning.Learned;

/** What was learned, as lines of text. */
public final class LearnedText {

    private static final int MOST_PLACES = 3;

    private LearnedText() {}

    /** Returns the lines. */
    public static List<String> lines(Learned learned) {
        List<String> lines = new ArrayList<>();
        lines.add("agreement with the marks, before and after: " + change(learned.seen()));
        lines.add(
                learned.parts() == 0
                        ? "on tunes left out: not known, one tune alone says nothing of others"
                        : "on tunes left out (%d parts): %s".formatted(learned.parts(), change(learned.leftOut())));
        learned.moves().forEach(move -> lines.add(move(move)));
        if (learned.moves().isEmpty()) {
            lines.add("no points moved");
        }
        learned.unmet().forEach(unmet -> lines.add(unmet(unmet)));
        learned.impossible()
                .forEach(place -> lines.add(place + ": left out, it cannot be played with the other marks"));
        return lines;
    }

    private static String move(Learned.Move move) {
        String text = "%s %d -> %d".formatted(move.ruleCase(), move.from(), move.to());
        text += move.moved().isEmpty() ? "" : ": for " + places(move.moved());
        return text + (move.against().isEmpty() ? "" : "; against " + places(move.against()));
    }

    private static String places(List<String> places) {
        int more = places.size() - MOST_PLACES;
        String named = String.join("; ", places.subList(0, Math.min(MOST_PLACES, places.size())));
        return more > 0 ? "%s and %d more".formatted(named, more) : named;
    }

    private static String unmet(Learned.Unmet unmet) {
        if (!unmet.why().isEmpty()) {
            return "%s: no points make this cheapest, because %s".formatted(unmet.place(), unmet.why());
        }
        return unmet.points() == 0
                ? "%s: does not come out for certain, other marks cost the same".formatted(unmet.place())
                : "%s: does not come out, other marks cost %d points less; what was marked elsewhere speaks against it"
                        .formatted(unmet.place(), unmet.points());
    }

    private static String change(Learned.Change change) {
        Agreement before = change.before();
        Agreement after = change.after();
        List<String> parts = new ArrayList<>();
        add(parts, "buttons", before.buttons(), after.buttons());
        add(parts, "directions", before.directions(), after.directions());
        add(parts, "fingers", before.fingers(), after.fingers());
        add(parts, "left hand", before.leftHand(), after.leftHand());
        add(parts, "air", before.air(), after.air());
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, String what, Agreement.Share before, Agreement.Share after) {
        if (after.of() > 0) {
            parts.add(String.format(
                    Locale.ROOT, "%s %.1f -> %.1f %% of %d", what, before.percent(), after.percent(), after.of()));
        }
    }
}
