package org.bellowscribe.musicxml;

import java.util.HashSet;
import java.util.Set;

/** Gives ids that begin with our prefix and that the score does not use. */
final class MarkIds implements XmlVisitor {

    private final Set<String> used = new HashSet<>();
    private int words;
    private int lines;
    private int fingers;
    private int symbols;
    private int signs;
    private int brackets;

    @Override
    public void end(XmlElement element) {
        String id = element.attribute("id");
        if (MarkNames.isOurs(id)) {
            used.add(id);
        }
    }

    String nextWords() {
        String id;
        do {
            words++;
            id = MarkNames.PREFIX + "w" + words;
        } while (used.contains(id));
        return id;
    }

    String nextLine() {
        String id;
        do {
            lines++;
            id = MarkNames.LINE + lines;
        } while (used.contains(id));
        return id;
    }

    String nextSymbol() {
        String id;
        do {
            symbols++;
            id = MarkNames.PREFIX + "h" + symbols;
        } while (used.contains(id));
        return id;
    }

    String nextSign() {
        String id;
        do {
            signs++;
            id = MarkNames.PREFIX + "s" + signs;
        } while (used.contains(id));
        return id;
    }

    String nextBracket() {
        String id;
        do {
            brackets++;
            id = MarkNames.PREFIX + "b" + brackets;
        } while (used.contains(id));
        return id;
    }

    String nextFinger() {
        String id;
        do {
            fingers++;
            id = MarkNames.PREFIX + "f" + fingers;
        } while (used.contains(id));
        return id;
    }
}
