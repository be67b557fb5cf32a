package org.bellowscribe.book;

import java.util.List;
import org.bellowscribe.diagnostic.PlainText;

/**
 * A book file to begin with.
 *
 * @param title title of the book
 * @param folder where the scores are, seen from the folder of the book file
 * @param instrument id of the instrument
 * @param remarks what there is to say about the choice, a sentence each
 * @param tunes the tunes in the order of the book
 */
public record BookProposal(String title, String folder, String instrument, List<String> remarks, List<Entry> tunes) {

    /**
     * A tune.
     *
     * @param file path of its score, seen from the folder of the scores
     * @param title its title
     * @param key the key to play it in; empty for that of the score
     * @param obstacle why it cannot be played and is left out; empty if it can
     */
    public record Entry(String file, String title, String key, String obstacle) {}

    /** Copies the lists. */
    public BookProposal {
        remarks = List.copyOf(remarks);
        tunes = List.copyOf(tunes);
    }

    /** Returns the file, ready to edit. */
    public String xml() {
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        xml.append("<!-- Edit what you like; the command book check says if it is right, the command mark makes the")
                .append(" editions. -->\n");
        remarks.forEach(remark -> xml.append("<!-- ").append(comment(remark)).append(" -->\n"));
        xml.append("<book").append(attribute("title", title)).append(attribute("folder", folder));
        xml.append(" order=\"as-listed\">\n");
        xml.append("  <instrument").append(attribute("id", instrument)).append("/>\n");
        tunes.forEach(tune -> xml.append(tune(tune)));
        return xml.append("</book>\n").toString();
    }

    private String tune(Entry tune) {
        String begin = "  <tune" + attribute("file", tune.file()) + attribute("title", tune.title())
                + (tune.key().isEmpty() ? "" : attribute("key", tune.key()));
        return tune.obstacle().isEmpty()
                ? begin + "/>\n"
                : begin + ">\n    <on" + attribute("instrument", instrument) + " leave-out=\"yes\"/> <!-- "
                        + comment(tune.obstacle()) + " -->\n  </tune>\n";
    }

    private static String attribute(String name, String value) {
        String plain = PlainText.line(value).strip();
        return " %s=\"%s\""
                .formatted(
                        name, plain.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;"));
    }

    // Two hyphens would end a comment.
    private static String comment(String text) {
        return PlainText.line(text).replaceAll("-(?=-|$)", "- ");
    }
}
