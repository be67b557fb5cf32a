package org.bellowscribe.exercise;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.LibraryFiles;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * How long each kind of change takes a learner, in seconds.
 *
 * @param seconds by kind of change, one for each
 * @param estimated the kinds that nobody has timed: estimates of ours, from memory
 */
public record ChangeTimes(Map<Change, Double> seconds, Set<Change> estimated) {

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("changes.xsd");
    private static final ChangeTimes USUAL = load();

    /** Copies the map and the set. */
    public ChangeTimes {
        seconds = Map.copyOf(seconds);
        estimated = Set.copyOf(estimated);
    }

    /** Returns the times of the table that comes with the tool, all of them estimated. */
    public static ChangeTimes usual() {
        return USUAL;
    }

    /**
     * Returns times that somebody took; kinds that are not among them keep the estimate.
     *
     * @param file an XML file as {@code schemas/changes.xsd} describes it
     * @throws DiagnosedException if it is wrong
     */
    public static ChangeTimes read(InputStream file) throws DiagnosedException, IOException {
        Map<Change, Double> own = times(SCHEMA.read(file));
        Map<Change, Double> all = new EnumMap<>(USUAL.seconds);
        all.putAll(own);
        Set<Change> estimated = EnumSet.allOf(Change.class);
        estimated.removeAll(own.keySet());
        return new ChangeTimes(all, estimated);
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
        DefinitionElement root = new LibraryFiles("practice", SCHEMA).root("changes");
        return new ChangeTimes(times(root), EnumSet.allOf(Change.class));
    }

    private static Map<Change, Double> times(DefinitionElement changes) {
        Map<Change, Double> times = new EnumMap<>(Change.class);
        for (DefinitionElement each : changes.children("change")) {
            for (Change change : Change.values()) {
                if (change.id().equals(each.required("kind"))) {
                    times.put(change, Double.valueOf(each.required("seconds")));
                }
            }
        }
        return times;
    }
}
