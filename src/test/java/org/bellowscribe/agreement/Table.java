package org.bellowscribe.agreement;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;

/**
 * A table of points beside the default one.
 *
 * @param name a few words
 * @param manner the default manner with the changed points
 */
record Table(String name, Manner manner) {

    /** Reads the tables that are compared. */
    static List<Table> all(Manner usual) {
        try (InputStream stream = Table.class.getResourceAsStream("tables.txt")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(":", 2))
                    .map(parts -> new Table(parts[0], changed(usual, parts[1])))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Manner changed(Manner usual, String changes) {
        Map<String, Points> rules = new HashMap<>(usual.byRule());
        for (String change : changes.trim().split("\\s+")) {
            String[] parts = change.split("[.=]");
            if (parts.length == 3) {
                Map<String, Integer> points =
                        new HashMap<>(rules.getOrDefault(parts[0], Points.NONE).byCase());
                points.put(parts[1], Integer.valueOf(parts[2]));
                rules.put(parts[0], new Points(points));
            }
        }
        return new Manner(usual.id(), usual.summary(), usual.remarks(), rules, usual.patterns());
    }
}
