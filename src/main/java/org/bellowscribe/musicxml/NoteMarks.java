package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.Annotation;

/** The marks of one note, in the order in which they are written. */
final class NoteMarks {

    private final List<Annotation.Symbol> symbols = new ArrayList<>();
    private final List<Annotation.Words> words = new ArrayList<>();
    private final List<Annotation.Line> lines = new ArrayList<>();
    private boolean bracketBegins;
    private boolean bracketEnds;
    private final List<Annotation.Finger> fingers = new ArrayList<>();
    private final List<Annotation.Sign> signs = new ArrayList<>();
    private final List<Annotation.Syllable> syllables = new ArrayList<>();

    private NoteMarks() {}

    /**
     * Returns the marks of each note that has any, by its 0-based place.
     *
     * @throws IllegalArgumentException if a mark has no text, two marks are to stand in one place, a line has two names
     */
    static SortedMap<Integer, NoteMarks> group(List<Annotation> annotations) {
        SortedMap<Integer, NoteMarks> notes = new TreeMap<>();
        Map<Integer, String> names = new HashMap<>();
        for (Annotation annotation : annotations) {
            notes.computeIfAbsent(annotation.noteIndex(), note -> new NoteMarks())
                    .add(annotation, names);
            if (annotation instanceof Annotation.Bracket bracket) {
                notes.computeIfAbsent(bracket.last(), note -> new NoteMarks()).bracketEnds = true;
            }
        }
        notes.values().forEach(NoteMarks::sort);
        return notes;
    }

    private void add(Annotation annotation, Map<Integer, String> names) {
        if (annotation instanceof Annotation.Words w) {
            require(!w.text().isEmpty(), "has words without text", w);
            require(words.stream().noneMatch(other -> other.above() == w.above()), "has words twice", w);
            words.add(w);
        } else if (annotation instanceof Annotation.Line l) {
            require(!l.text().isEmpty(), "has a line without text", l);
            lines.add(l);
        } else if (annotation instanceof Annotation.Bracket) {
            bracketBegins = true;
        } else {
            addToHead(annotation, names);
        }
    }

    private void addToHead(Annotation annotation, Map<Integer, String> names) {
        if (annotation instanceof Annotation.Symbol h) {
            boolean free = symbols.stream().noneMatch(other -> other.offset().equals(h.offset()));
            require(free, "has two chord symbols at one moment", h);
            symbols.add(h);
        } else if (annotation instanceof Annotation.Finger f) {
            require(f.finger() >= 1 && f.finger() <= 5, "has a finger that no hand has", f);
            require(fingers.isEmpty(), "has two fingers", f);
            fingers.add(f);
        } else if (annotation instanceof Annotation.Sign s) {
            require(signs.isEmpty(), "has two signs", s);
            signs.add(s);
        } else if (annotation instanceof Annotation.Syllable s) {
            require(!s.text().isEmpty() && !s.name().isEmpty() && s.line() >= 0, "has a bad syllable", s);
            require(syllables.stream().noneMatch(other -> other.line() == s.line()), "has a line twice", s);
            String name = names.putIfAbsent(s.line(), s.name());
            require(name == null || name.equals(s.name()), "gives a line a second name", s);
            syllables.add(s);
        }
    }

    /** Returns the chord symbols in order of time. */
    List<Annotation.Symbol> symbols() {
        return symbols;
    }

    /** Returns the words above, then those below. */
    List<Annotation.Words> words() {
        return words;
    }

    /** Returns the lines about the tune, from the top down. */
    List<Annotation.Line> lines() {
        return lines;
    }

    /** Returns true if a bracket begins at the note. */
    boolean bracketBegins() {
        return bracketBegins;
    }

    /** Returns true if a bracket ends behind the note. */
    boolean bracketEnds() {
        return bracketEnds;
    }

    /** Returns the finger, if any. */
    List<Annotation.Finger> fingers() {
        return fingers;
    }

    /** Returns the sign of a music font, if any. */
    List<Annotation.Sign> signs() {
        return signs;
    }

    /** Returns the syllables from the top line down. */
    List<Annotation.Syllable> syllables() {
        return syllables;
    }

    private void sort() {
        symbols.sort(Comparator.comparing(Annotation.Symbol::offset));
        words.sort(Comparator.comparing(w -> !w.above()));
        syllables.sort(Comparator.comparingInt(Annotation.Syllable::line));
    }

    private static void require(boolean holds, String trouble, Annotation annotation) {
        if (!holds) {
            throw new IllegalArgumentException("The note " + trouble + " (" + annotation + ").");
        }
    }
}
