package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.MarkLines;
import org.jspecify.annotations.Nullable;

/** Finds lyrics and words at the notes of a text: ours by their names and ids, and those that lost or never had them. */
final class MarkFinder implements XmlVisitor {

    /**
     * A lyric or words.
     *
     * @param annotation what it says; the name of a lyric that is not ours is empty
     * @param ours true if its name or id says so
     * @param insertion where a name or an id could be put in
     */
    record Found(Annotation annotation, boolean ours, int insertion) {

        /** Returns true if it is ours and says something. */
        boolean isMark() {
            return ours && !isFiller();
        }

        /** Returns true if it is not known to be ours and says something. */
        boolean isOther() {
            return !ours && !isFiller();
        }

        private boolean isFiller() {
            return annotation instanceof Annotation.Syllable syllable
                    && syllable.text().isBlank();
        }
    }

    private final List<Found> found = new ArrayList<>();
    private int notes;
    private int line;
    private int types;
    private boolean grace;
    private final StringBuilder words = new StringBuilder();
    private String text = "";

    /**
     * Returns a text in which some of what was found bears our names.
     *
     * @param all what was found in the text
     * @param texts what is to bear them, each with the name that a lyric shall have
     */
    static String adopted(String text, List<Found> all, Map<Annotation, String> texts) {
        Map<Integer, String> lines = new HashMap<>();
        texts.forEach((mark, name) -> {
            if (mark instanceof Annotation.Syllable syllable) {
                lines.put(syllable.line(), name);
            }
        });
        StringBuilder adopted = new StringBuilder(text);
        for (int i = all.size() - 1; i >= 0; i--) {
            // Grace notes have nothing on our lines.
            String name = all.get(i).annotation() instanceof Annotation.Syllable filler
                            && filler.text().isBlank()
                    ? lines.get(filler.line())
                    : texts.get(all.get(i).annotation());
            if (name != null && !all.get(i).ours()) {
                String attribute = all.get(i).annotation() instanceof Annotation.Words
                        ? " id=\"" + MarkNames.PREFIX + "a" + i
                        : " name=\"" + MarkNames.PREFIX + XmlText.escape(name);
                adopted.insert(all.get(i).insertion(), attribute + "\"");
            }
        }
        return adopted.toString();
    }

    /** Returns what was found in the order of the text. */
    List<Found> found() {
        return found;
    }

    @Override
    public void start(XmlElement element) {
        if (element.is("lyric")) {
            text = "";
        } else if (element.is("note")) {
            grace = false;
        } else if (element.is("direction")) {
            words.setLength(0);
            types = 0;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (element.is("text") && element.isIn("lyric")) {
            text = XmlText.unescape(element.plainContent());
        } else if (element.is("words")) {
            words.append(XmlText.unescape(element.plainContent()));
        } else if (element.isIn("direction") && !element.is("voice") && !element.is("staff") && !element.is("offset")) {
            types++;
        } else if (element.is("lyric") && (grace || !text.isBlank())) {
            lyric(element);
        } else if (element.is("direction") && !words.toString().isBlank()) {
            direction(element);
        } else if (element.is("grace")) {
            grace = true;
        } else if (NoteAnchors.isNote(element)) {
            if (grace) {
                behindGrace();
            }
            notes++;
        }
    }

    // Programs move words that stood between a grace note and its note before both.
    private void behindGrace() {
        for (int i = found.size() - 1; i >= 0; i--) {
            Found each = found.get(i);
            if (each.annotation().noteIndex() != notes) {
                return;
            }
            if (each.annotation() instanceof Annotation.Words mark) {
                Annotation behind = new Annotation.Words(notes + 1, mark.above(), mark.text());
                found.set(i, new Found(behind, each.ours(), each.insertion()));
            }
        }
    }

    private void lyric(XmlElement element) {
        String name = element.attribute("name");
        boolean ours = MarkNames.isOurs(name);
        line = number(element.attribute("number")) - 1;
        String ownName = ours && name != null ? name.substring(MarkNames.PREFIX.length()) : "";
        if (ours || name == null) {
            Annotation mark = ownName.equals(MarkLines.WORDS) && !text.isBlank()
                    ? new Annotation.Words(notes, false, text)
                    : new Annotation.Syllable(notes, line, XmlText.unescape(ownName), text);
            found.add(new Found(mark, ours, element.start() + "<lyric".length()));
        }
    }

    private void direction(XmlElement element) {
        String id = element.attribute("id");
        if (id != null && id.startsWith(MarkNames.LINE)) {
            // About the tune, not about a note: nothing of how it is played can be read from it.
            return;
        }
        boolean ours = MarkNames.isOurs(id);
        boolean above = !"below".equals(element.attribute("placement"));
        if (ours || (id == null && types == 1)) {
            Annotation.Words mark = new Annotation.Words(notes, above, words.toString());
            found.add(new Found(mark, ours, element.start() + "<direction".length()));
        }
    }

    private static int number(@Nullable String value) {
        return value != null && value.matches("\\d{1,3}") ? Integer.parseInt(value) : 1;
    }
}
