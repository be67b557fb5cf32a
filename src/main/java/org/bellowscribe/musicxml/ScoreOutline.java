package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;

/**
 * What one walk over a text tells.
 *
 * @param rootName name of the outermost element
 * @param noteCount number of notes in measures
 * @param lyrics the lyric lines in use
 * @param graces the notes, for our words that a program may show at another note
 */
record ScoreOutline(String rootName, int noteCount, LyricLines lyrics, GraceWalk graces) {

    private static final int MOST_SHOWN = 30;

    private static final class Root implements XmlVisitor {
        private String name = "";
        private int second = -1;

        @Override
        public void end(XmlElement element) {
            if (element.depth() == 1) {
                second = name.isEmpty() ? -1 : element.start();
                name = element.name();
            }
        }
    }

    /**
     * Walks over a text.
     *
     * @throws DiagnosedException if its elements do not nest or it has not exactly one outermost element
     */
    static ScoreOutline of(String text) throws DiagnosedException {
        Root root = new Root();
        NoteAnchors notes = new NoteAnchors();
        LyricLines lyrics = new LyricLines();
        GraceWalk graces = new GraceWalk();
        requireXml(text);
        XmlWalk.over(text, root, notes, lyrics, graces);
        if (root.name.isEmpty()) {
            throw TextPlace.notXml(text, 0, "The file holds no XML element.");
        }
        if (root.second >= 0) {
            throw TextPlace.notXml(text, root.second, "A second outermost element begins here.");
        }
        return new ScoreOutline(root.name, notes.count(), lyrics, graces);
    }

    /** Returns what programs may show elsewhere than it is meant. */
    List<Diagnostic> remarks(String text) {
        List<Diagnostic> remarks = new ArrayList<>(lyrics.warnings(text));
        remarks.addAll(WordsBeforeGrace.remarks(graces.notes()));
        return remarks;
    }

    // A text of another kind may have elements in it; what is wrong with their order is not what is wrong with it.
    private static void requireXml(String text) throws DiagnosedException {
        String begin = text.stripLeading();
        // Text before an XML declaration is told as that.
        if (!begin.isEmpty() && begin.charAt(0) != '<' && !begin.contains("<?xml")) {
            String line = begin.lines().findFirst().orElse("").strip();
            String shown = line.length() <= MOST_SHOWN ? line : line.substring(0, MOST_SHOWN) + "...";
            throw TextPlace.notXml(text, 0, "The file is no XML: it begins with \"%s\", not with <.".formatted(shown));
        }
    }
}
