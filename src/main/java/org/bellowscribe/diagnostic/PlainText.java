package org.bellowscribe.diagnostic;

/**
 * Makes text from files, names and command lines safe to show: what would move the cursor, color the terminal, turn the
 * direction of writing or fake a line becomes a visible sign.
 */
public final class PlainText {

    /** Stands for what is not shown: U+FFFD REPLACEMENT CHARACTER. */
    private static final char HIDDEN = '\uFFFD';

    private PlainText() {}

    /** Returns a text as one line. */
    public static String line(String text) {
        return filtered(text, false);
    }

    /** Returns a text whose line feeds are its own. */
    public static String lines(String text) {
        return filtered(text, true);
    }

    private static String filtered(String text, boolean keepsLines) {
        if (text.chars().noneMatch(c -> isUnsafe(c) || !keepsLines && c == '\n')) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        for (char c : text.toCharArray()) {
            boolean space = c == '\t' || !keepsLines && isLineEnd(c);
            plain.append(space ? ' ' : isUnsafe(c) ? HIDDEN : c);
        }
        return plain.toString();
    }

    private static boolean isLineEnd(int c) {
        return c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029;
    }

    // C0 and C1 controls, DEL, line and paragraph separators, and the bidirectional embeddings, overrides and isolates.
    private static boolean isUnsafe(int c) {
        return c < ' ' && c != '\n'
                || c >= 0x7F && c <= 0x9F
                || c == 0x2028
                || c == 0x2029
                || c >= 0x202A && c <= 0x202E
                || c >= 0x2066 && c <= 0x2069;
    }
}
