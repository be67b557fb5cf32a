package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;

/** Sets of options under which marks are taken through notation programs. */
final class MarkedSets {

    /** Those of a first run, all marks as signs, whole words, left hand written out. */
    static final List<List<String>> OPTIONS = List.of(
            List.of(),
            List.of(
                    "--style",
                    "compact",
                    "--marks",
                    "direction,direction-changes,air,opening,opening-at-repeat,hand,fingers,buttons,left-hand,bellows-signs"),
            List.of("--style", "beginner", "--marks", "direction,air,opening,hand,buttons,left-hand,fingers"),
            List.of(
                    "--style",
                    "two-lines",
                    "--written-left-hand",
                    "part",
                    "--marks",
                    "direction,air,buttons,left-hand,left-hand-fingers"));

    /** A line for each row; in the gallery and in what is saved and marked again. */
    static final List<String> ROWS = List.of("--style", "rows");

    /** Styles that the sets have not, each shown in a few scores. */
    static final List<String> OTHER_STYLES = List.of(
            "rows", "fingers", "apart", "german", "french", "italian", "spanish", "dutch", "swedish", "catalan");

    private MarkedSets() {}

    /** Returns the sets, and that of rows. */
    static List<List<String>> withRows() {
        List<List<String>> sets = new ArrayList<>(OPTIONS);
        sets.add(ROWS);
        return sets;
    }
}
