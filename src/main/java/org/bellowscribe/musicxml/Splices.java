package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects small changes to a text and makes them all at once; what lies between them stays as it is. */
final class Splices {

    private record Splice(int from, int to, String text) {}

    private final List<Splice> splices = new ArrayList<>();

    /** Puts other text in place of what is inside an element that has ended. */
    void content(XmlElement element, String text) {
        splices.add(new Splice(element.contentStart(), element.contentEnd(), text));
    }

    /** Takes an element that has ended out of the text, with the white space before it. */
    void remove(XmlElement element) {
        splices.add(new Splice(element.spaceStart(), element.end(), ""));
    }

    /** Puts text in at an offset. */
    void insert(int offset, String text) {
        splices.add(new Splice(offset, offset, text));
    }

    /** Returns the text with all changes. */
    String apply(String text) {
        StringBuilder changed = new StringBuilder(text.length() + 16 * splices.size());
        int done = 0;
        splices.sort(Comparator.comparingInt(Splice::from));
        for (Splice splice : splices) {
            changed.append(text, done, splice.from).append(splice.text);
            done = splice.to;
        }
        return changed.append(text, done, text.length()).toString();
    }
}
