package org.bellowscribe.exercise;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * How long each kind of change takes a learner, in seconds (common practice, no source).
 *
 * @param seconds by kind of change, one for each
 */
public record ChangeTimes(Map<Change, Double> seconds) {

    private static final String FILE = "/org/bellowscribe/shared/practice/changes.xml";
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
        try (InputStream stream = ChangeTimes.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException("The file (%s) must be there.".formatted(FILE));
            }
            Map<Change, Double> times = new EnumMap<>(Change.class);
            for (DefinitionElement each :
                    DefinitionSchema.of("changes.xsd").read(stream).children("change")) {
                for (Change change : Change.values()) {
                    if (change.id().equals(each.required("kind"))) {
                        times.put(change, Double.valueOf(each.required("seconds")));
                    }
                }
            }
            return new ChangeTimes(times);
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(FILE), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
