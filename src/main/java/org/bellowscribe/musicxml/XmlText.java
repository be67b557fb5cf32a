package org.bellowscribe.musicxml;

/** Characters of XML text. */
final class XmlText {

    private XmlText() {}

    /**
     * Returns a text ready to stand inside an element or a double-quoted attribute.
     *
     * @throws IllegalArgumentException if it holds a character that XML cannot hold
     */
    static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(requireXml(c));
            }
        });
        return escaped.toString();
    }

    /** Returns a text with the five named references and the numeric ones resolved; others stay as they are. */
    static String unescape(String raw) {
        StringBuilder text = new StringBuilder(raw.length());
        int i = 0;
        while (i < raw.length()) {
            int semicolon = raw.charAt(i) == '&' ? raw.indexOf(';', i) : -1;
            String resolved = semicolon < 0 ? "" : resolve(raw.substring(i + 1, semicolon));
            if (resolved.isEmpty()) {
                text.append(raw.charAt(i));
                i++;
            } else {
                text.append(resolved);
                i = semicolon + 1;
            }
        }
        return text.toString();
    }

    private static String resolve(String name) {
        return switch (name) {
            case "amp" -> "&";
            case "lt" -> "<";
            case "gt" -> ">";
            case "quot" -> "\"";
            case "apos" -> "'";
            default -> numeric(name);
        };
    }

    private static String numeric(String name) {
        try {
            int c = name.startsWith("#x") ? Integer.parseInt(name.substring(2), 16) : decimal(name);
            return Character.isValidCodePoint(c) ? Character.toString(c) : "";
        } catch (NumberFormatException e) {
            return "";
        }
    }

    private static int decimal(String name) {
        return name.startsWith("#") ? Integer.parseInt(name.substring(1)) : -1;
    }

    private static int requireXml(int c) {
        boolean allowed = c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c < 0xD800)
                || (c > 0xDFFF && c < 0xFFFE)
                || c > 0xFFFF;
        if (!allowed) {
            throw new IllegalArgumentException(String.format("The character (U+%04X) cannot stand in an XML text.", c));
        }
        return c;
    }
}
