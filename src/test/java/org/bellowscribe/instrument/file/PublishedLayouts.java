package org.bellowscribe.instrument.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Compares instruments of the library with tables of published notes. */
final class PublishedLayouts {

    private PublishedLayouts() {}

    /**
     * Checks all melody buttons.
     *
     * @param table name of the table; its rows stand in the order outer to inner
     */
    static void assertButtons(String table, String id) {
        List<List<String>> lines = PublishedTable.of("layouts.csv", table);
        assertFalse(lines.isEmpty(), table);
        List<String> rows = lines.stream().map(line -> line.get(1)).distinct().toList();
        List<String> expected = lines.stream()
                .map(line ->
                        "%d.%s %s %s".formatted(1 + rows.indexOf(line.get(1)), line.get(2), line.get(3), line.get(4)))
                .toList();
        assertEquals(expected, InstrumentLines.buttons(InstrumentLines.find(id)));
    }

    /** Checks all left-hand buttons; in the table a minor chord has m after it, on the library's side it is small. */
    static void assertLeftHand(String table, String id) {
        List<List<String>> lines = PublishedTable.of("basses.csv", table);
        assertFalse(lines.isEmpty(), table);
        List<String> expected = new ArrayList<>();
        for (String column : List.of("outer", "inner")) {
            lines.stream()
                    .filter(line -> line.get(1).equals(column))
                    .map(line -> "%d.%s %s %s"
                            .formatted(
                                    column.equals("outer") ? 1 : 2,
                                    line.get(2),
                                    name(line.get(3), line.get(4)),
                                    name(line.get(3), line.get(5))))
                    .forEach(expected::add);
        }
        assertEquals(expected, InstrumentLines.leftHand(InstrumentLines.find(id)));
    }

    private static String name(String kind, String name) {
        return kind.equals("chord") ? name.toLowerCase(Locale.ROOT) : name;
    }
}
