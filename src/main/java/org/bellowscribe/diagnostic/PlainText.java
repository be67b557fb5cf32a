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

    /** Returns a text whose lines, ended as on this or another system, are its own. */
    public static String lines(String text) {
        return filtered(text, true);
    }

    private static String filtered(String text, boolean keepsLines) {
        if (text.chars().noneMatch(c -> isUnsafe(c) || c == '\n')) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean keeps = keepsLines && (c == '\n' || (c == '\r' && text.startsWith("\n", i + 1)));
            boolean space = c == '\t' || (!keepsLines && isLineEnd(c));
            plain.append(keeps ? c : space ? ' ' : isUnsafe(c) ? HIDDEN : c);
        }
        return plain.toString();
    }

    private static boolean isLineEnd(int c) {
        return c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029;
    }

    // C0 and C1 controls, DEL, line and paragraph separators, and the bidirectional embeddings, overrides and isolates.
    private static boolean isUnsafe(int c) {
        return (c < ' ' && c != '\n')
                || isBetween(c, 0x7F, 0x9F)
                || isBetween(c, 0x2028, 0x202E)
                || isBetween(c, 0x2066, 0x2069);
    }

    private static boolean isBetween(int c, int first, int last) {
        return c >= first && c <= last;
    }
}
