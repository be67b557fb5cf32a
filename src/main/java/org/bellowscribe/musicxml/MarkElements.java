package org.bellowscribe.musicxml;

import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.style.Fonts;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Spelling;

/** The elements that we add, as text. */
final class MarkElements {

    private final int linesOfScore;
    private final MarkLook look;

    /**
     * Creates what makes elements.
     *
     * @param linesOfScore number of the last lyric line of the score itself, or 0
     * @param look how marks look
     */
    MarkElements(int linesOfScore, MarkLook look) {
        this.linesOfScore = linesOfScore;
        this.look = look;
    }

    /** Returns what stands on a line that has nothing to say. */
    String filler() {
        return look.filler();
    }

    /** Returns a lyric of one of our lines, which begin behind those of the score. */
    String lyric(Annotation.Syllable syllable) {
        return lyric(syllable, syllable.text());
    }

    /** Returns the lyric of a grace note on the line of a syllable: nothing to be seen. */
    String filler(Annotation.Syllable syllable) {
        return lyric(syllable, "");
    }

    private String lyric(Annotation.Syllable syllable, String text) {
        return "<lyric number=\"" + (linesOfScore + 1 + syllable.line()) + "\" name=\"" + MarkNames.PREFIX
                + XmlText.escape(syllable.name()) + "\"><syllabic>single</syllabic><text" + font(syllable.name()) + ">"
                + XmlText.escape(text) + "</text></lyric>";
    }

    /** Returns a direction of words, in the voice and on the staff of its note. */
    String direction(Annotation.Words words, String id, NoteAnchor note) {
        return direction(words.above() ? "above" : "below", words.text(), id, note);
    }

    /** Returns a direction of a line about the tune, below the staff. */
    String line(Annotation.Line line, String id, NoteAnchor note) {
        return direction("below", line.text(), id, note);
    }

    private String direction(String placement, String text, String id, NoteAnchor note) {
        return "<direction placement=\"" + placement + "\" id=\"" + id + "\"><direction-type><words" + font(Fonts.WORDS)
                + ">"
                + XmlText.escape(text) + "</words></direction-type>" + element("voice", note.voice())
                + element("staff", note.staff()) + "</direction>";
    }

    /** Returns one end of a bracket, under a number that scores seldom use. */
    static String bracket(String type, String id, NoteAnchor note) {
        return "<direction placement=\"above\" id=\"" + id + "\"><direction-type><bracket type=\"" + type
                + "\" number=\"6\" line-end=\"down\"/></direction-type>" + element("voice", note.voice())
                + element("staff", note.staff()) + "</direction>";
    }

    /** Returns a chord symbol in the key and the transposition of its part, on the staff of its note. */
    static String harmony(Annotation.Symbol symbol, String id, NoteAnchor note, PartContext.At context) {
        Spelling root = Spelling.of(symbol.root().plus(-context.chromatic()), context.fifths());
        Spelling bass = Spelling.of(symbol.bass().plus(-context.chromatic()), context.fifths());
        return "<harmony id=\"" + id + "\">" + note("root", root) + kind(symbol.third())
                + (symbol.bass().equals(symbol.root()) ? "" : note("bass", bass))
                + (symbol.offset().isPositive() ? element("offset", context.offset(symbol.offset())) : "")
                + element("staff", note.staff()) + "</harmony>";
    }

    private static String kind(Third third) {
        return switch (third) {
            case MAJOR -> "<kind text=\"\">major</kind>";
            case MINOR -> "<kind text=\"m\">minor</kind>";
            case NONE -> "<kind text=\"5\">power</kind>";
        };
    }

    private static String note(String name, Spelling note) {
        String alter = note.alter() == 0 ? "" : element(name + "-alter", String.valueOf(note.alter()));
        return "<" + name + ">" + element(name + "-step", String.valueOf(note.letter())) + alter + "</" + name + ">";
    }

    /** Returns what goes into {@code <technical>} for a finger. */
    String finger(Annotation.Finger finger) {
        return "<fingering" + font(Fonts.FINGERS) + ">" + finger.finger() + "</fingering>";
    }

    private String font(String sort) {
        StringBuilder text = new StringBuilder();
        look.fonts()
                .of(sort)
                .forEach((name, value) -> text.append(' ')
                        .append(name)
                        .append("=\"")
                        .append(XmlText.escape(value))
                        .append('"'));
        return text.toString();
    }

    /** Returns what goes into {@code <technical>} for a sign: by its name alone, as programs would print a text. */
    static String sign(Annotation.Sign sign) {
        return "<other-technical smufl=\"" + XmlText.escape(sign.smufl()) + "\"></other-technical>";
    }

    /** Returns what is to stand in notations of the score: some programs read only the first notations. */
    static String technical(String content, String id) {
        return "<technical id=\"" + id + "\">" + content + "</technical>";
    }

    /** Returns notations for a note that has none. */
    static String notations(String content, String id) {
        return "<notations id=\"" + id + "\"><technical>" + content + "</technical></notations>";
    }

    private static String element(String name, String content) {
        return content.isEmpty() ? "" : "<" + name + ">" + content + "</" + name + ">";
    }
}
