package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Manners of playing as text. */
final class MannerTable {

    private static final String LINE = "  %-18s %s\n";
    private static final String LEGEND = """

            slow, medium, quick, very-quick: the note before lasts 0.5 s or more, 0.25 s, 0.15 s, less; long-note,
            medium-note, short-note: 0.4 s, 0.2 s, less. closing: under the last note. In brackets: %s.
            """;

    private MannerTable() {}

    /** Returns the library, a manner a line. */
    static String list() {
        StringBuilder text = new StringBuilder();
        for (Manner manner : MannerLibrary.all()) {
            text.append(LINE.formatted(manner.id(), manner.summary()));
        }
        return text.toString();
    }

    /** Returns the points of a manner, a rule at a time, beside those of the usual one where they differ. */
    static String show(Manner manner) {
        StringBuilder text = new StringBuilder(manner.id())
                .append("\n  ")
                .append(manner.summary())
                .append('\n');
        manner.remarks().forEach(remark -> text.append("  - ").append(remark).append('\n'));
        manner.patterns()
                .forEach(each -> text.append("  pattern of the left hand%s: %s\n"
                        .formatted(
                                each.time() == null ? "" : " in " + each.time(),
                                each.pattern().id())));
        Manner usual = MannerLibrary.of(MannerLibrary.DEFAULT_ID);
        for (Rule rule : Rule.all()) {
            text.append("\n")
                    .append(rule.id())
                    .append(": ")
                    .append(rule.summary())
                    .append('\n');
            text.append("  ")
                    .append(points(rule, manner.points(rule), usual.points(rule)))
                    .append('\n');
        }
        return text.append(LEGEND.formatted(usual.id())).toString();
    }

    private static String points(Rule rule, Points points, Points usual) {
        List<String> cases = new ArrayList<>();
        for (String name : rule.cases()) {
            String other = points.of(name) == usual.of(name) ? "" : " (%d)".formatted(usual.of(name));
            cases.add("%s %d%s".formatted(name, points.of(name), other));
        }
        return String.join(", ", cases);
    }
}
