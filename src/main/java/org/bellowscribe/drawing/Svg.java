package org.bellowscribe.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;
import org.bellowscribe.diagnostic.PlainText;

/**
 * Writes SVG elements one after the other; numbers have one decimal at most, all text is escaped. The same calls always give
 * the same text.
 */
final class Svg {

    private final StringBuilder text = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /**
     * Begins a picture.
     *
     * @param id what its own ids begin with, so that two pictures may stand on one page
     * @param width width in units
     * @param height height in units
     * @param millimeters width on paper
     */
    Svg(String id, double width, double height, double millimeters) {
        begin(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "id",
                id,
                "viewBox",
                "0 0 %s %s".formatted(number(width), number(height)),
                "width",
                number(millimeters) + "mm",
                "height",
                number(millimeters * height / width) + "mm",
                "role",
                "img",
                "aria-labelledby",
                "%s-title %s-description".formatted(id, id),
                "font-family",
                "sans-serif",
                "font-size",
                12,
                "fill",
                "currentColor");
    }

    /**
     * Begins a picture in a page, as wide as the page lets it be.
     *
     * @param width width in units
     * @param height height in units
     * @param label what it shows, for those who cannot see it
     */
    Svg(double width, double height, String label) {
        begin(
                "svg",
                "viewBox",
                "0 0 %s %s".formatted(number(width), number(height)),
                "role",
                "img",
                "aria-label",
                PlainText.line(label),
                "fill",
                "currentColor");
    }

    /** Says in words what the picture shows, for those who cannot see it. */
    void describe(String id, String title, String description) {
        leaf("title", title, "id", id + "-title");
        leaf("desc", description, "id", id + "-description");
    }

    /** Opens an element; attributes are names and values in turn. */
    void begin(String element, Object... attributes) {
        start(element, attributes);
        text.append(">\n");
        open.push(element);
    }

    /** Closes the element that was opened last. */
    void end() {
        text.append("</").append(open.pop()).append(">\n");
    }

    /** Writes an element without content. */
    void draw(String element, Object... attributes) {
        start(element, attributes);
        text.append("/>\n");
    }

    /** Writes an element with words in it. */
    void leaf(String element, String words, Object... attributes) {
        start(element, attributes);
        content(element, words);
    }

    private void content(String element, String words) {
        text.append('>')
                .append(escaped(PlainText.line(words)))
                .append("</")
                .append(element)
                .append(">\n");
    }

    /** Writes a straight line. */
    void line(double x1, double y1, double x2, double y2, Object... more) {
        start("line", "x1", x1, "y1", y1, "x2", x2, "y2", y2);
        attributes(more);
        text.append("/>\n");
    }

    /** Writes a rectangle. */
    void rect(double x, double y, double width, double height, Object... more) {
        start("rect", "x", x, "y", y, "width", width, "height", height);
        attributes(more);
        text.append("/>\n");
    }

    /** Writes words on the base line y. */
    void words(double x, double y, String words, Object... more) {
        start("text", "x", x, "y", y);
        attributes(more);
        content("text", words);
    }

    /** Returns the finished picture. */
    String close() {
        while (!open.isEmpty()) {
            end();
        }
        return text.toString();
    }

    private void start(String element, Object... attributes) {
        text.append('<').append(element);
        attributes(attributes);
    }

    private void attributes(Object... namesAndValues) {
        for (int i = 0; i < namesAndValues.length; i += 2) {
            Object value = namesAndValues[i + 1];
            String shown = value instanceof Double number ? number(number) : escaped(String.valueOf(value));
            text.append(' ')
                    .append(namesAndValues[i])
                    .append("=\"")
                    .append(shown)
                    .append('"');
        }
    }

    /** Returns a number as short as it can be written with one decimal at most. */
    static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
