package org.bellowscribe.instrument.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.Shared;

/** Tables of published notes, as comma-separated values with some fields quoted. */
public final class PublishedTable {

    private PublishedTable() {}

    /** Returns the names of the tables in a file, or skips the calling test if the file is absent. */
    static List<String> names(String file) {
        return lines(file).stream().map(line -> line.get(0)).distinct().toList();
    }

    /**
     * Returns the lines of a table, split into fields, or skips the calling test if the file is absent.
     *
     * @param file name of the file, such as {@code layouts.csv}
     * @param name the first field of the lines
     */
    static List<List<String>> of(String file, String name) {
        List<List<String>> table =
                lines(file).stream().filter(line -> line.get(0).equals(name)).toList();
        if (table.isEmpty()) {
            throw new AssertionError("no table " + name);
        }
        return table;
    }

    /** Returns all lines but the heading, split into fields, or skips the calling test if the file is absent. */
    public static List<List<String>> lines(String file) {
        try {
            return Files.readAllLines(Shared.path("facts/" + file)).stream()
                    .skip(1)
                    .map(PublishedTable::split)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> split(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(letter);
            }
        }
        fields.add(field.toString());
        return fields;
    }
}
