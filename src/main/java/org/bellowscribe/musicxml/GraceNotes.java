package org.bellowscribe.musicxml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.Annotation;

/**
 * Grace notes between notes with marks. They have no marks, but an empty syllable on each of our lines: the converter of
 * LilyPond 2.24 counts a syllable for every note that has none and does not draw it on grace notes, so that all marks behind
 * one come out under the wrong notes (measured, as in {@code cli/MarksShownTest}; no other program shows an empty syllable).
 */
final class GraceNotes {

    private GraceNotes() {}

    /**
     * Returns the empty syllables of each grace note of a voice that has syllables of ours, by the place of the note.
     *
     * @param notes the notes of a text without marks of ours
     * @param marked the marks of each note, by its 0-based place
     */
    static SortedMap<Integer, List<Annotation.Syllable>> fillers(
            List<GraceWalk.Note> notes, SortedMap<Integer, NoteMarks> marked) {
        Map<String, SortedMap<Integer, Annotation.Syllable>> lines = new HashMap<>();
        for (GraceWalk.Note note : notes) {
            NoteMarks marks = marked.get(note.index());
            if (marks != null) {
                SortedMap<Integer, Annotation.Syllable> here =
                        lines.computeIfAbsent(note.voice(), voice -> new TreeMap<>());
                marks.syllables().forEach(syllable -> here.putIfAbsent(syllable.line(), syllable));
            }
        }
        SortedMap<Integer, List<Annotation.Syllable>> fillers = new TreeMap<>();
        for (GraceWalk.Note note : notes) {
            if (note.grace() && !note.chord() && !marked.containsKey(note.index())) {
                fillers.put(
                        note.index(),
                        List.copyOf(lines.getOrDefault(note.voice(), new TreeMap<>())
                                .values()));
            }
        }
        return fillers;
    }
}
