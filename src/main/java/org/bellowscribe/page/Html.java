package org.bellowscribe.page;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.bellowscribe.diagnostic.PlainText;

/** Text within HTML and SVG: what comes from scores and names is text there, whatever signs it holds. */
public final class Html {

    private static final String UNRESERVED = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";

    private Html() {}

    /** Returns one line of text for between tags and within quotation marks. */
    public static String text(String words) {
        return PlainText.line(words)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** Returns a link to a file below a folder, its parts with slashes between; every sign that is more than a name is written out. */
    static String link(String path) {
        StringBuilder link = new StringBuilder();
        for (byte each : path.getBytes(StandardCharsets.UTF_8)) {
            char sign = (char) (each & 0xFF);
            link.append(UNRESERVED.indexOf(sign) >= 0 ? String.valueOf(sign) : "%%%02X".formatted((int) sign));
        }
        return link.toString();
    }

    /** Returns a word with a capital letter. */
    static String capital(String word) {
        return word.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
