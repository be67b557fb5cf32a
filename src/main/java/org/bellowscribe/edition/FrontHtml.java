package org.bellowscribe.edition;

import org.bellowscribe.annotation.style.BookText;

/** The front page for screen and printer. */
public final class FrontHtml {

    private FrontHtml() {}

    /** Returns the page. */
    public static String of(FrontPage front) {
        Edition edition = front.edition();
        HtmlPage page = new HtmlPage(edition.title(), "46em", edition.style().language());
        page.element("h1", edition.title());
        page.element(
                "p",
                front.say(BookText.EDITION_FOR, "name", edition.instrument().name()));
        for (Edition.Paragraph paragraph : front.paragraphs()) {
            if (!paragraph.heading().isEmpty()) {
                page.element("h2", paragraph.heading());
            }
            page.element("p", paragraph.text());
        }
        page.element("h2", front.say(BookText.CAUTIONS));
        page.markup("<ul>\n");
        Caution.all(edition.style().book())
                .forEach(caution -> page.markup("<li>%s <small>(%s)</small></li>\n"
                        .formatted(HtmlPage.escaped(caution.text()), HtmlPage.escaped(caution.source()))));
        page.markup("</ul>\n");
        page.element("h2", front.say(BookText.SIGNS));
        page.markup("<table>\n<thead><tr><th scope=\"col\">%s</th><th scope=\"col\">%s</th></tr></thead>\n<tbody>\n"
                .formatted(HtmlPage.escaped(front.say(BookText.SIGN)), HtmlPage.escaped(front.say(BookText.MEANING))));
        front.legend()
                .forEach(entry -> page.markup("<tr><td class=\"sign\">%s</td><td>%s</td></tr>\n"
                        .formatted(HtmlPage.escaped(entry.sign()), HtmlPage.escaped(entry.meaning()))));
        page.markup("</tbody>\n</table>\n");
        page.markup("<h2 class=\"page\">%s</h2>\n".formatted(HtmlPage.escaped(front.say(BookText.BUTTONS))));
        page.element("p", front.buttonsInWords());
        page.markup("<figure>\n" + inline(front.svg()) + "</figure>\n");
        return page.close();
    }

    // Within a page a drawing has no declaration of its own.
    private static String inline(String svg) {
        return svg.substring(svg.indexOf("<svg"));
    }
}
