package org.bellowscribe.instrument;

import java.util.Locale;

/** An SVG page of the size A4, in millimeters from the top left corner. */
final class PageCanvas {

    private final StringBuilder svg = new StringBuilder();

    /**
     * Begins the page.
     *
     * @param title what the page shows, for those who cannot see it
     */
    PageCanvas(String title) {
        svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"210mm\" height=\"297mm\"")
                .append(" viewBox=\"0 0 210 297\" role=\"img\" font-family=\"sans-serif\">\n")
                .append("<title>")
                .append(escaped(title))
                .append("</title>\n")
                .append("<rect width=\"210\" height=\"297\" fill=\"white\"/>\n");
    }

    /**
     * Writes words on the base line y.
     *
     * @param anchor which part of the words stands at x: {@code start}, {@code middle} or {@code end}
     */
    void text(double x, double y, double size, String anchor, String words) {
        svg.append("<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\">%s</text>\n"
                .formatted(number(x), number(y), number(size), anchor, escaped(words)));
    }

    /** Draws a round button with words in its upper and lower half and a line between them. */
    void button(double x, double y, double radius, String upper, String lower) {
        svg.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"white\" stroke=\"black\" stroke-width=\"0.4\"/>\n"
                .formatted(number(x), number(y), number(radius)));
        svg.append("<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"black\" stroke-width=\"0.2\"/>\n"
                .formatted(number(x - radius), number(y), number(x + radius), number(y)));
        double size = radius * 0.52;
        text(x, y - radius * 0.22, size, "middle", upper);
        text(x, y + radius * 0.64, size, "middle", lower);
    }

    /** Returns the finished page. */
    String close() {
        return svg + "</svg>\n";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
