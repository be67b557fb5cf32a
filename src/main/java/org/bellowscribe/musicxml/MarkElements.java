package org.bellowscribe.musicxml;

import org.bellowscribe.annotation.Annotation;

/** The elements that we add, as text. */
final class MarkElements {

    private MarkElements() {}

    /** Returns a lyric of one of our lines, which begin behind those of the score. */
    static String lyric(Annotation.Syllable syllable, int linesOfScore) {
        return "<lyric number=\"" + (linesOfScore + 1 + syllable.line()) + "\" name=\"" + MarkNames.PREFIX
                + XmlText.escape(syllable.name()) + "\"><syllabic>single</syllabic><text>"
                + XmlText.escape(syllable.text()) + "</text></lyric>";
    }

    /** Returns a direction of words, in the voice and on the staff of its note. */
    static String direction(Annotation.Words words, String id, NoteAnchor note) {
        return "<direction placement=\"" + (words.above() ? "above" : "below") + "\" id=\"" + id
                + "\"><direction-type><words>" + XmlText.escape(words.text()) + "</words></direction-type>"
                + element("voice", note.voice()) + element("staff", note.staff()) + "</direction>";
    }

    /** Returns notations with a finger number. */
    static String fingering(Annotation.Finger finger, String id) {
        return "<notations id=\"" + id + "\"><technical><fingering>" + finger.finger()
                + "</fingering></technical></notations>";
    }

    private static String element(String name, String content) {
        return content.isEmpty() ? "" : "<" + name + ">" + content + "</" + name + ">";
    }
}
