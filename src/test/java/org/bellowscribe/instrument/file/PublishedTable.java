package org.bellowscribe.instrument.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.Shared;

/** Lines of a table of published notes, as comma-separated values with some fields quoted. */
final class PublishedTable {

    private PublishedTable() {}

    /**
     * Returns the lines of a table about an instrument, split into fields, or skips the calling test if it is absent.
     *
     * @param file name of the file, such as {@code layouts.csv}
     * @param instrument the first field of the lines
     */
    static List<List<String>> of(String file, String instrument) {
        try {
            return Files.readAllLines(Shared.path("facts/" + file)).stream()
                    .map(PublishedTable::split)
                    .filter(line -> line.get(0).equals(instrument))
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
