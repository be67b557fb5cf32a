package org.bellowscribe.edition;

import java.util.List;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.diagnostic.PlainText;

/** The front page in plain text. */
public final class FrontText {

    private static final int WIDTH = 78;

    private final StringBuilder text = new StringBuilder();

    private FrontText() {}

    /** Returns the page, each line with its line feed. */
    public static String of(FrontPage front) {
        FrontText page = new FrontText();
        Edition edition = front.edition();
        page.line(edition.title());
        page.line(front.say(BookText.EDITION_FOR, "name", edition.instrument().name()));
        for (Edition.Paragraph paragraph : front.paragraphs()) {
            if (paragraph.heading().isEmpty()) {
                page.line("");
            } else {
                page.heading(paragraph.heading());
            }
            page.paragraph("", paragraph.text());
        }
        page.heading(front.say(BookText.CAUTIONS));
        Caution.all(edition.style().book())
                .forEach(caution -> page.paragraph("* ", caution.text() + " (" + caution.source() + ")"));
        page.heading(front.say(BookText.SIGNS));
        front.legend().forEach(entry -> page.line("%-20s %s".formatted(entry.sign(), entry.meaning())));
        page.heading(front.say(BookText.BUTTONS));
        page.paragraph("", front.buttonsInWords());
        page.line("");
        page.text.append(front.drawing());
        return page.text.toString();
    }

    private void heading(String heading) {
        line("");
        line(heading);
        line("-".repeat(heading.length()));
    }

    private void paragraph(String sign, String words) {
        List<String> lines = TextLines.wrap(PlainText.line(words), WIDTH);
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? sign : " ".repeat(sign.length())) + lines.get(i));
        }
    }

    private void line(String line) {
        text.append(PlainText.line(line)).append('\n');
    }
}
