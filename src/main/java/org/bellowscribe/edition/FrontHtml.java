package org.bellowscribe.edition;

/** The front page for screen and printer. */
public final class FrontHtml {

    private FrontHtml() {}

    /** Returns the page. */
    public static String of(FrontPage front) {
        Edition edition = front.edition();
        HtmlPage page = new HtmlPage(edition.title(), "46em");
        page.element("h1", edition.title());
        page.element("p", "Edition for %s.".formatted(edition.instrument().name()));
        for (Edition.Paragraph paragraph : front.paragraphs()) {
            if (!paragraph.heading().isEmpty()) {
                page.element("h2", paragraph.heading());
            }
            page.element("p", paragraph.text());
        }
        page.element("h2", FrontPage.CAUTIONS);
        page.markup("<ul>\n");
        Caution.all()
                .forEach(caution -> page.markup("<li>%s <small>(%s)</small></li>\n"
                        .formatted(HtmlPage.escaped(caution.text()), HtmlPage.escaped(caution.source()))));
        page.markup("</ul>\n");
        page.element("h2", FrontPage.SIGNS);
        page.markup(
                "<table>\n<thead><tr><th scope=\"col\">sign</th><th scope=\"col\">meaning</th></tr></thead>\n<tbody>\n");
        front.legend()
                .forEach(entry -> page.markup("<tr><td class=\"sign\">%s</td><td>%s</td></tr>\n"
                        .formatted(HtmlPage.escaped(entry.sign()), HtmlPage.escaped(entry.meaning()))));
        page.markup("</tbody>\n</table>\n");
        page.markup("<h2 class=\"page\">%s</h2>\n".formatted(FrontPage.BUTTONS));
        page.element("p", front.buttonsInWords());
        page.markup("<figure>\n" + inline(front.svg()) + "</figure>\n");
        return page.close();
    }

    // Within a page a drawing has no declaration of its own.
    private static String inline(String svg) {
        return svg.substring(svg.indexOf("<svg"));
    }
}
