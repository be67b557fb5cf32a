package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * Grace notes between notes with marks. They have no marks, but an empty syllable on each of our lines: the converter of
 * LilyPond 2.24 counts a syllable for every note that has none and does not draw it on grace notes, so that all marks behind
 * one come out under the wrong notes (measured, as in {@code cli/MarksShownTest}; no other program shows an empty syllable).
 */
final class GraceNotes implements XmlVisitor {

    private final Map<Integer, NoteMarks> marked;
    // By part and voice: the lines of ours there, and the grace notes.
    private final Map<String, SortedMap<Integer, Annotation.Syllable>> lines = new HashMap<>();
    private final Map<String, List<Integer>> graces = new HashMap<>();
    private String part = "";
    private String voice = "";
    private boolean isGrace;
    private boolean isChord;
    private int count;

    private GraceNotes(Map<Integer, NoteMarks> marked) {
        this.marked = marked;
    }

    /**
     * Returns the empty syllables of each grace note of a voice that has syllables of ours, by the place of the note.
     *
     * @param text text without marks of ours
     * @param marked the marks of each note, by its 0-based place
     */
    static SortedMap<Integer, List<Annotation.Syllable>> fillers(String text, SortedMap<Integer, NoteMarks> marked)
            throws DiagnosedException {
        SortedMap<Integer, List<Annotation.Syllable>> fillers = new TreeMap<>();
        if (text.contains("<grace")) {
            GraceNotes notes = new GraceNotes(marked);
            XmlWalk.over(text, notes);
            notes.graces.forEach((where, places) -> {
                SortedMap<Integer, Annotation.Syllable> here = notes.lines.getOrDefault(where, new TreeMap<>());
                places.forEach(place -> fillers.put(place, List.copyOf(here.values())));
            });
        }
        return fillers;
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        part = id == null ? part : id;
        if (NoteAnchors.isNote(element)) {
            voice = "";
            isGrace = false;
            isChord = false;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (NoteAnchors.isNote(element)) {
            note();
            count++;
        } else if (element.isIn("note")) {
            isGrace = isGrace || element.is("grace");
            isChord = isChord || element.is("chord");
            voice = element.is("voice") ? element.plainContent() : voice;
        }
    }

    private void note() {
        String where = part + "\n" + voice;
        NoteMarks marks = marked.get(count);
        if (marks != null) {
            marks.syllables()
                    .forEach(s ->
                            lines.computeIfAbsent(where, key -> new TreeMap<>()).putIfAbsent(s.line(), s));
        } else if (isGrace && !isChord) {
            graces.computeIfAbsent(where, key -> new ArrayList<>()).add(count);
        }
    }
}
