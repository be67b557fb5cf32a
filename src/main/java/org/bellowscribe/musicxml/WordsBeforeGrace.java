package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.MarkLines;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;

/**
 * Words of ours at a note behind which grace notes end the measure. The converter of LilyPond 2.24 moves them behind the
 * grace notes, wherever they are written (measured, as in {@code cli/MarksShownTest}); other programs do not. So they stand
 * below that note, on a line of syllables behind our others. Two programs drop syllables of rests: words stay there.
 */
final class WordsBeforeGrace {

    private WordsBeforeGrace() {}

    /**
     * Returns marks in which such words are syllables.
     *
     * @param notes the notes of the text to mark
     * @param filler what stands on the lines above where the new line begins before them: programs put lines in the order
     *     in which they first see them
     */
    static List<Annotation> below(List<GraceWalk.Note> notes, List<Annotation> marks, String filler) {
        Set<Integer> ends = new HashSet<>();
        beforeGrace(notes).stream().filter(note -> !note.rest()).forEach(note -> ends.add(note.index()));
        Map<Integer, String> texts = new HashMap<>();
        List<Annotation> moved = new ArrayList<>();
        for (Annotation mark : marks) {
            if (mark instanceof Annotation.Words words && ends.contains(words.noteIndex())) {
                texts.merge(words.noteIndex(), words.text(), (one, other) -> one + ", " + other);
            } else {
                moved.add(mark);
            }
        }
        if (!texts.isEmpty()) {
            addLine(moved, texts, filler);
        }
        return moved;
    }

    private static void addLine(List<Annotation> marks, Map<Integer, String> texts, String filler) {
        Map<Integer, Annotation.Syllable> firsts = new HashMap<>();
        for (Annotation mark : marks) {
            if (mark instanceof Annotation.Syllable syllable) {
                firsts.merge(
                        syllable.line(), syllable, (one, other) -> one.noteIndex() <= other.noteIndex() ? one : other);
            }
        }
        int first = texts.keySet().stream().min(Integer::compare).orElseThrow();
        firsts.forEach((line, syllable) -> {
            if (syllable.noteIndex() > first) {
                marks.add(new Annotation.Syllable(first, line, syllable.name(), filler));
            }
        });
        texts.forEach((note, text) -> marks.add(new Annotation.Syllable(note, firsts.size(), MarkLines.WORDS, text)));
    }

    /** Returns a note for each place where words of ours are left there. */
    static List<Diagnostic> remarks(List<GraceWalk.Note> notes) {
        return beforeGrace(notes).stream()
                .filter(GraceWalk.Note::worded)
                .map(note -> Diagnostic.note(
                        DiagnosticCode.WORDS,
                        note.where(),
                        "LilyPond 2.24 shows the words over the last rest one note late, because grace notes end the measure.",
                        "Maybe check the place there; other programs show them right."))
                .toList();
    }

    // The notes behind which grace notes end the measure, or take of their time.
    private static List<GraceWalk.Note> beforeGrace(List<GraceWalk.Note> notes) {
        List<GraceWalk.Note> found = new ArrayList<>();
        GraceWalk.Note last = null;
        for (int i = 0; i < notes.size(); i++) {
            GraceWalk.Note note = notes.get(i);
            if (!note.grace()) {
                last = note.chord() ? last : note;
                continue;
            }
            boolean ends = i + 1 == notes.size() || notes.get(i + 1).stretch() != note.stretch();
            boolean follows = last != null && last.stretch() == note.stretch() && !found.contains(last);
            if (follows && (ends || note.steals())) {
                found.add(last);
            }
        }
        return found;
    }
}
