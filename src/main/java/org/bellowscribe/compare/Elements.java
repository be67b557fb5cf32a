package org.bellowscribe.compare;

import java.util.ArrayDeque;
import java.util.Deque;
import org.bellowscribe.page.Html;

/** Writes HTML elements one after the other; all text is escaped. */
final class Elements {

    private final StringBuilder text = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are names and values in turn. */
    Elements begin(String element, Object... attributes) {
        tag(element, attributes);
        open.push(element);
        return this;
    }

    /** Closes the element that was opened last. */
    Elements end() {
        text.append("</").append(open.pop()).append(">\n");
        return this;
    }

    /** Writes an element without content, such as a picture. */
    Elements empty(String element, Object... attributes) {
        tag(element, attributes);
        return this;
    }

    /** Writes an element with words in it. */
    Elements leaf(String element, String words, Object... attributes) {
        tag(element, attributes);
        text.append(escaped(words)).append("</").append(element).append(">\n");
        return this;
    }

    /** Writes words. */
    Elements words(String words) {
        text.append(escaped(words));
        return this;
    }

    /** Writes a drawing that is an element already. */
    Elements drawing(String svg) {
        text.append(svg);
        return this;
    }

    /** Writes what was written elsewhere. */
    Elements add(Elements other) {
        text.append(other.text);
        return this;
    }

    /** Returns what was written. */
    @Override
    public String toString() {
        return text.toString();
    }

    private void tag(String element, Object... attributes) {
        text.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            text.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(String.valueOf(attributes[i + 1])))
                    .append('"');
        }
        text.append('>');
    }

    private static String escaped(String words) {
        return Html.text(words);
    }
}
