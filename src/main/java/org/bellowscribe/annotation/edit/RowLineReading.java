package org.bellowscribe.annotation.edit;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.MarkLines;
import org.bellowscribe.annotation.SignedMarks;

/** Brings together what lines of buttons for one row each say at a note: the buttons of one note may lie in several rows. */
final class RowLineReading {

    private final Map<Integer, SortedMap<Integer, Annotation.Syllable>> notes;

    /**
     * Looks at marks.
     *
     * @param filler what stands in a line whose row has nothing at a note
     */
    RowLineReading(List<Annotation> found, String filler) {
        notes = found.stream()
                .filter(mark -> mark instanceof Annotation.Syllable)
                .map(mark -> (Annotation.Syllable) mark)
                .filter(mark -> MarkLines.row(mark.name()) > 0
                        && !SignedMarks.unsigned(mark.text()).equals(filler))
                .collect(Collectors.groupingBy(
                        Annotation.Syllable::noteIndex,
                        Collectors.toMap(mark -> MarkLines.row(mark.name()), mark -> mark, (a, b) -> a, TreeMap::new)));
    }

    /** Returns the texts at the note of a syllable by row, without their signs; none unless it is the first of them. */
    SortedMap<Integer, String> from(Annotation.Syllable syllable) {
        SortedMap<Integer, String> texts = new TreeMap<>();
        SortedMap<Integer, Annotation.Syllable> rows = notes.getOrDefault(syllable.noteIndex(), new TreeMap<>());
        if (!rows.isEmpty() && rows.values().iterator().next().equals(syllable)) {
            rows.forEach((row, mark) -> texts.put(row, SignedMarks.unsigned(mark.text())));
        }
        return texts;
    }

    /** Returns true if a text at the note of a syllable bears the sign. */
    boolean isSigned(Annotation.Syllable syllable) {
        return notes.getOrDefault(syllable.noteIndex(), new TreeMap<>()).values().stream()
                .anyMatch(mark -> SignedMarks.isSigned(mark.text()));
    }
}
