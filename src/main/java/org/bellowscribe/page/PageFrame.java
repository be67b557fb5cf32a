package org.bellowscribe.page;

/** What every page has around it: its head, the style sheet, and that nothing may be loaded from anywhere else. */
public final class PageFrame {

    /** Stands in every file that is ours, so that no other is ever written over. */
    public static final String OURS = "<meta name=\"generator\" content=\"Bellowscribe\">";

    // Scripts, styles and the font of the engraver come with the page; there is no network.
    private static final String SOURCES = "default-src 'none'; script-src 'self' file: 'wasm-unsafe-eval'; "
            + "style-src 'self' file: 'unsafe-inline'; font-src data:; connect-src data:; base-uri 'none'; form-action 'none'";

    private PageFrame() {}

    /**
     * Returns a page.
     *
     * @param title its title
     * @param root the way from its folder to that of the index, such as {@code ../}; empty for the index itself
     * @param head further elements of the head
     * @param body what it shows
     */
    public static String around(String title, String root, String head, String body) {
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                %s
                <meta http-equiv="Content-Security-Policy" content="%s">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <meta name="color-scheme" content="light dark">
                <title>%s</title>
                <link rel="stylesheet" href="%s%s">
                %s</head>
                %s</html>
                """.formatted(OURS, SOURCES, Html.text(title), root, SharedFiles.STYLE, head, body);
    }

    /** Returns the element that loads a script once the page is read. */
    public static String script(String link) {
        return "<script defer src=\"" + link + "\"></script>\n";
    }
}
