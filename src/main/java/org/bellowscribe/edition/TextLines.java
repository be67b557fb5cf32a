package org.bellowscribe.edition;

import java.util.ArrayList;
import java.util.List;

/** Breaks words into lines. */
public final class TextLines {

    private TextLines() {}

    /**
     * Returns a text in lines; none if it is blank.
     *
     * @param width most characters of a line; a longer word has a line of its own
     */
    public static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }
}
