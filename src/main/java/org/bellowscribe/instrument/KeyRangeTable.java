package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Prints the keys that an instrument plays as a table in plain text. */
public final class KeyRangeTable {

    private static final List<String> HEADINGS =
            List.of("key", "from", "to", "octaves", "tonic", "subdominant", "dominant");

    private KeyRangeTable() {}

    /**
     * Returns the table: a line of headings, then one line for each key, columns two spaces apart, each line with its
     * line feed.
     */
    public static String text(List<KeyRange> ranges) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(HEADINGS);
        for (KeyRange range : ranges) {
            lines.add(List.of(
                    range.name(),
                    range.lowest().toString(),
                    range.highest().toString(),
                    String.valueOf(range.octaves()),
                    range.tonic().label(),
                    range.subdominant().label(),
                    range.dominant().label()));
        }
        List<Integer> widths = IntStream.range(0, HEADINGS.size())
                .mapToObj(column -> lines.stream()
                        .mapToInt(line -> line.get(column).length())
                        .max()
                        .orElse(0))
                .toList();
        return lines.stream().map(line -> line(line, widths)).collect(Collectors.joining());
    }

    private static String line(List<String> cells, List<Integer> widths) {
        return IntStream.range(0, cells.size())
                        .mapToObj(column -> cells.get(column)
                                + " "
                                        .repeat(widths.get(column)
                                                - cells.get(column).length()))
                        .collect(Collectors.joining("  "))
                        .stripTrailing()
                + "\n";
    }
}
