package org.bellowscribe.edition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.annotation.style.Style;

/**
 * What the signs of all tunes of a book mean. A sign is explained once, at the first tune in which it occurs; where a number
 * belongs to one row in some tunes and to another in others, all of them are named: the sheet says which.
 */
final class BookLegend {

    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private final Style style;
    private final int rows;
    private final Map<String, LegendEntry> entries = new LinkedHashMap<>();
    private final Map<String, List<String>> rowsOfSigns = new LinkedHashMap<>();

    BookLegend(Style style, int rows) {
        this.style = style;
        this.rows = rows;
    }

    /** Takes in what a sign means in a tune. */
    void add(LegendEntry entry) {
        Matcher number = NUMBER.matcher(entry.meaning());
        for (int row = 1; row <= rows && number.find(0); row++) {
            String name = style.words().rows().name(row, rows);
            if (!name.isEmpty() && entry.meaning().equals(buttonOf(number.group(), name))) {
                addRow(entry, number.group(), name);
                return;
            }
        }
        entries.putIfAbsent(kind(entry.meaning()), entry);
    }

    private void addRow(LegendEntry entry, String button, String name) {
        String sign = NUMBER.matcher(entry.sign()).replaceAll("N");
        List<String> names = rowsOfSigns.computeIfAbsent(sign, any -> new ArrayList<>());
        if (!names.contains(name)) {
            names.add(name);
        }
        String key = "row of " + sign;
        LegendEntry first = entries.getOrDefault(key, entry);
        Matcher shown = NUMBER.matcher(first.meaning());
        String example = shown.find() ? shown.group() : button;
        entries.put(key, new LegendEntry(first.sign(), buttonOf(example, String.join(" / ", names))));
    }

    private String buttonOf(String button, String row) {
        return style.legend().say(Meaning.BUTTON_OF, Map.of("button", button, "row", row));
    }

    /** Returns the entries in the order in which they came. */
    List<LegendEntry> entries() {
        return List.copyOf(entries.values());
    }

    // The same meaning at another number or note is no news.
    private static String kind(String meaning) {
        return NUMBER.matcher(meaning).replaceAll("N").replaceAll("\\b[A-G](#|b)?( minor)?\\b", "X$2");
    }
}
