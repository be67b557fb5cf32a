package org.bellowscribe.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;

/** Which marks of a sheet are others than before, in words. */
final class MarkChanges {

    private static final int MOST = 20;

    private MarkChanges() {}

    /**
     * Compares two sheets of a tune: its lyrics and words.
     *
     * @param name the name of the tune where the sheet has none
     * @return one line a mark, twenty at most and how many more there are
     */
    static List<String> between(byte[] before, byte[] after, String name) {
        try {
            Map<String, String> old = marks(before, name);
            Map<String, String> now = marks(after, name);
            Set<String> places = new LinkedHashSet<>(now.keySet());
            places.addAll(old.keySet());
            List<String> lines = new ArrayList<>();
            for (String place : places) {
                String was = old.getOrDefault(place, "none");
                String is = now.getOrDefault(place, "none");
                if (!was.equals(is)) {
                    lines.add("  %s: %s, before %s".formatted(place, is, was));
                }
            }
            return cut(lines);
        } catch (DiagnosedException e) {
            return List.of("  the marks before cannot be read");
        }
    }

    private static List<String> cut(List<String> lines) {
        if (lines.isEmpty()) {
            return List.of("  no mark has changed");
        }
        if (lines.size() <= MOST) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, MOST));
        first.add("  and %d more".formatted(lines.size() - MOST));
        return first;
    }

    private static Map<String, String> marks(byte[] sheet, String name) throws DiagnosedException {
        ScoreDocument document = ScoreDocument.decode(sheet);
        Tune tune = ScoreReader.read(document.withoutMarks().text(), name, ReadingOptions.DEFAULT);
        Whereabouts whereabouts = new Whereabouts(tune);
        Map<Integer, String> places = new LinkedHashMap<>();
        for (Event event : tune.events()) {
            event.noteIndices().forEach(note -> places.put(note, whereabouts.name(event.index())));
        }
        Map<String, String> marks = new LinkedHashMap<>();
        for (Annotation mark : document.marks()) {
            String place = places.getOrDefault(mark.noteIndex(), "note %d of the file".formatted(mark.noteIndex() + 1));
            if (mark instanceof Annotation.Syllable syllable) {
                marks.merge(place + ", " + syllable.name(), syllable.text(), (a, b) -> a + " " + b);
            } else if (mark instanceof Annotation.Words words) {
                String where = words.above() ? "above" : "below";
                marks.merge(place + ", " + where, words.text(), (a, b) -> a + " " + b);
            }
        }
        return marks;
    }
}
