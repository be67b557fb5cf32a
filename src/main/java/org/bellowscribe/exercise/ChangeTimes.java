package org.bellowscribe.exercise;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * How long each kind of change takes a learner, in seconds.
 *
 * @param seconds by kind of change, one for each
 * @param estimated the kinds that nobody has timed: estimates of ours, from memory
 */
public record ChangeTimes(Map<Change, Double> seconds, Set<Change> estimated) {

    private static final String FILE = "/org/bellowscribe/shared/practice/changes.xml";
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
        Map<Change, Double> own = times(file);
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
        try (InputStream stream = ChangeTimes.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException("The file (%s) must be there.".formatted(FILE));
            }
            return new ChangeTimes(times(stream), EnumSet.allOf(Change.class));
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(FILE), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<Change, Double> times(InputStream file) throws DiagnosedException, IOException {
        Map<Change, Double> times = new EnumMap<>(Change.class);
        for (DefinitionElement each : SCHEMA.read(file).children("change")) {
            for (Change change : Change.values()) {
                if (change.id().equals(each.required("kind"))) {
                    times.put(change, Double.valueOf(each.required("seconds")));
                }
            }
        }
        return times;
    }
}
