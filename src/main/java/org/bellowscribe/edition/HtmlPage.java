package org.bellowscribe.edition;

import java.util.List;
import org.bellowscribe.diagnostic.PlainText;

/**
 * An HTML page without anything from elsewhere, to be read on a screen, light or dark, or printed on A4. Every text is
 * escaped.
 */
final class HtmlPage {

    private static final String BEGINNING = """
            <!DOCTYPE html>
            <html lang="LANGUAGE">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>TITLE</title>
            <style>
            :root { color-scheme: light dark; --ink: #1a1a1a; --paper: #ffffff; --line: #767676; }
            @media (prefers-color-scheme: dark) { :root { --ink: #ececec; --paper: #161616; --line: #8f8f8f; } }
            body { font-family: Georgia, "Times New Roman", serif; line-height: 1.45; color: var(--ink);
              background: var(--paper); max-width: WIDTH; margin: 2em auto; padding: 0 1em; }
            h1 { font-size: 1.8em; margin-bottom: 0.1em; } h2 { font-size: 1.25em; margin-top: 1.6em; }
            table { border-collapse: collapse; width: 100%; } caption { text-align: left; padding: 0.4em 0; }
            th, td { text-align: left; vertical-align: top; padding: 0.3em 0.5em; border-bottom: 1px solid var(--line); }
            td.number { text-align: right; } td.page { min-width: 3em; } tr.words td { padding-left: 2.5em; }
            tr.main td, tr.main th { border-bottom: none; } dt { font-weight: bold; } .sign { white-space: nowrap; }
            a { color: inherit; } a:focus-visible { outline: 3px solid; } .wide { overflow-x: auto; }
            figure { margin: 1em 0; } figure svg { max-width: 100%; height: auto; background: #ffffff; }
            @media print { :root { --ink: #000000; --paper: #ffffff; }
              body { max-width: none; margin: 0; padding: 0; font-size: 10pt; } .wide { overflow: visible; }
              .screen { display: none; } h2.page { break-before: page; }
              @page { size: A4; margin: 16mm; } h2 { break-after: avoid; } figure, li, dd { break-inside: avoid; }
              tbody { break-inside: avoid; } thead { display: table-header-group; } figure svg { max-height: 225mm; }
              a { text-decoration: none; } }
            </style>
            </head>
            <body>
            <main>
            """;

    private final StringBuilder html = new StringBuilder();

    /**
     * Begins a page.
     *
     * @param title what it is
     * @param width how wide its text is at most, such as {@code 46em}
     * @param language language of its words, such as {@code de}
     */
    HtmlPage(String title, String width, String language) {
        html.append(BEGINNING
                .replace("WIDTH", width)
                .replace("LANGUAGE", escaped(language))
                .replace("TITLE", escaped(title)));
    }

    /** Writes an element with a text. */
    void element(String name, String text) {
        html.append('<')
                .append(name)
                .append('>')
                .append(escaped(text))
                .append("</")
                .append(name)
                .append(">\n");
    }

    /** Writes markup of one's own. */
    void markup(String markup) {
        html.append(markup);
    }

    /** Writes a list. */
    void list(List<String> items) {
        html.append("<ul>\n");
        items.forEach(item -> element("li", item));
        html.append("</ul>\n");
    }

    /** Returns the finished page. */
    String close() {
        return html + "</main>\n</body>\n</html>\n";
    }

    /** Returns a text as it stands in an element or in an attribute. */
    static String escaped(String text) {
        return PlainText.line(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
