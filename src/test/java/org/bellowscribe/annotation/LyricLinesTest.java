package org.bellowscribe.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LyricLinesTest {

    @Test
    void aLineThatBeginsLaterThanTheOneBelowItIsFilledThere() {
        LyricLines lines = new LyricLines();
        lines.add(5, new Mark.Syllable(2, "upper", "u"));
        lines.add(1, new Mark.Syllable(0, "lower", "l"));
        assertEquals(List.of("1 0 ·", "1 1 l", "5 0 u"), texts(lines));
    }

    @Test
    void afterItsFirstNoteALineNeedsNoFillersAboveIt() {
        LyricLines lines = new LyricLines();
        lines.add(1, new Mark.Syllable(0, "upper", "u"));
        lines.add(1, new Mark.Syllable(0, "lower", "l"));
        lines.add(2, new Mark.Syllable(1, "lower", "l"));
        assertEquals(List.of("1 0 u", "1 1 l", "2 1 l"), texts(lines));
    }

    @Test
    void fillersForOneLineCountAsItsFirstNote() {
        LyricLines lines = new LyricLines();
        lines.add(9, new Mark.Syllable(9, "first", "a"));
        lines.add(9, new Mark.Syllable(9, "second", "b"));
        lines.add(1, new Mark.Syllable(1, "third", "c"));
        lines.add(2, new Mark.Syllable(2, "second", "b"));
        assertEquals(List.of("1 0 ·", "1 1 ·", "1 2 c", "2 1 b", "9 0 a", "9 1 b"), texts(lines));
    }

    @Test
    void aNoteHasOneSyllableForEachLine() {
        LyricLines lines = new LyricLines();
        lines.add(1, new Mark.Syllable(0, "line", "first"));
        lines.add(1, new Mark.Syllable(0, "line", "second"));
        assertEquals(List.of("1 0 first"), texts(lines));
    }

    private static List<String> texts(LyricLines lines) {
        return lines.annotations("·").stream()
                .map(annotation -> (Annotation.Syllable) annotation)
                .map(syllable -> syllable.noteIndex() + " " + syllable.line() + " " + syllable.text())
                .toList();
    }
}
