package org.bellowscribe.marking;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.stage.Stage;

/**
 * Lines of words about a tune, to print below its beginning.
 *
 * @param tune those of the sheet of the tune, from the top down, none empty
 * @param stages those of the sheets of stages; none for a stage that is not there
 */
public record SheetLines(List<String> tune, Map<Stage, List<String>> stages) {

    /** None. */
    public static final SheetLines NONE = new SheetLines(List.of(), Map.of());

    /** Copies the lists. */
    public SheetLines {
        tune = List.copyOf(tune);
        Map<Stage, List<String>> copy = new EnumMap<>(Stage.class);
        stages.forEach((stage, lines) -> copy.put(stage, List.copyOf(lines)));
        stages = Map.copyOf(copy);
    }
}
