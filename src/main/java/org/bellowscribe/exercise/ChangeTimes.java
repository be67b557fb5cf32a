package org.bellowscribe.exercise;

import java.util.EnumMap;
import java.util.Map;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.LibraryFiles;

/**
 * How long each kind of change takes a learner, in seconds (common practice, no source).
 *
 * @param seconds by kind of change, one for each
 */
public record ChangeTimes(Map<Change, Double> seconds) {

    private static final ChangeTimes USUAL = load();

    /** Copies the map. */
    public ChangeTimes {
        seconds = Map.copyOf(seconds);
    }

    /** Returns the times of the table that comes with the tool. */
    public static ChangeTimes usual() {
        return USUAL;
    }

    /** Returns the time of a change in seconds. */
    public double of(Change change) {
        Double found = seconds.get(change);
        if (found == null) {
            throw new IllegalStateException("The table of changes must have the kind (%s).".formatted(change.id()));
        }
        return found;
    }

    private static ChangeTimes load() {
        Map<Change, Double> times = new EnumMap<>(Change.class);
        DefinitionElement root = new LibraryFiles("practice", DefinitionSchema.of("changes.xsd")).root("changes");
        for (DefinitionElement each : root.children("change")) {
            for (Change change : Change.values()) {
                if (change.id().equals(each.required("kind"))) {
                    times.put(change, Double.valueOf(each.required("seconds")));
                }
            }
        }
        return new ChangeTimes(times);
    }
}
