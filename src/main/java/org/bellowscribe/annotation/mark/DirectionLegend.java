package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.WordLabels;

/** What the words for the direction of the bellows mean. */
final class DirectionLegend {

    private DirectionLegend() {}

    /** Returns the entries for the words that occur among some marks. */
    static List<LegendEntry> of(List<Mark> marks, Style style) {
        WordLabels words = style.words();
        List<LegendEntry> entries = new ArrayList<>();
        if (occurs(marks, words.push())) {
            entries.add(new LegendEntry(words.push(), style.legend().say(Meaning.DIRECTION_PUSH)));
        }
        if (occurs(marks, words.pull())) {
            entries.add(new LegendEntry(words.pull(), style.legend().say(Meaning.DIRECTION_PULL)));
        }
        return entries;
    }

    private static boolean occurs(List<Mark> marks, String text) {
        return marks.stream()
                .anyMatch(
                        mark -> mark instanceof Mark.Words words && words.text().equals(text));
    }
}
