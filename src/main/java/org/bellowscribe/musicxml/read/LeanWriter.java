package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;

/** Collects the lean text: the head once, the measures part by part, also if they come measure by measure. */
final class LeanWriter {

    private final StringBuilder head = new StringBuilder();
    private final List<Part> parts = new ArrayList<>();
    private StringBuilder target = head;

    private static final class Part {
        private final String id;
        private final StringBuilder measures = new StringBuilder();
        private int count;

        Part(String id) {
            this.id = id;
        }
    }

    /** Opens a new part and returns its index. */
    int newPart(String id) {
        parts.add(new Part(id));
        return parts.size() - 1;
    }

    /** Returns the index of a part, opening it if it is new. */
    int part(String id) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).id.equals(id)) {
                return i;
            }
        }
        return newPart(id);
    }

    /** Starts a measure; a part that was silent in earlier measures gets empty ones, so that all stay in step. */
    void startMeasure(int part, int index, String number) {
        Part current = parts.get(part);
        while (current.count < index) {
            current.measures.append("<measure number=\"\"/>");
            current.count++;
        }
        current.count++;
        target = current.measures;
        target.append("<measure number=\"");
        escape(number);
        target.append("\">");
    }

    void endMeasure() {
        target.append("</measure>");
        target = head;
    }

    void startTag(String name) {
        target.append('<').append(name);
    }

    void attribute(String name, String value) {
        target.append(' ').append(name).append("=\"");
        escape(value);
        target.append('"');
    }

    void endStartTag() {
        target.append('>');
    }

    void endTag(String name) {
        target.append("</").append(name).append('>');
    }

    void text(String value) {
        escape(value);
    }

    List<String> partIds() {
        return parts.stream().map(part -> part.id).toList();
    }

    /** Returns the whole text. */
    String finish() {
        StringBuilder all = new StringBuilder("<score-partwise>").append(head);
        parts.forEach(part -> all.append("<part>").append(part.measures).append("</part>"));
        return all.append("</score-partwise>").toString();
    }

    private void escape(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '&' -> target.append("&amp;");
                case '<' -> target.append("&lt;");
                case '>' -> target.append("&gt;");
                case '"' -> target.append("&quot;");
                default -> target.append(c);
            }
        }
    }
}
