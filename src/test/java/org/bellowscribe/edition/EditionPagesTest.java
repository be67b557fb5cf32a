package org.bellowscribe.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.SketchedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.syllabus.TuneThings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Index and front page of a book with one tune and one that cannot be played. */
class EditionPagesTest {

    private static final Style STYLE = Sketch.style(StyleLibrary.DEFAULT_ID);
    private static final String NASTY = "<script>alert(\"1\")</script> & \u202Ehidden";

    private static Edition edition() {
        return edition(STYLE);
    }

    private static Edition edition(Style style) {
        DecidedTune tune = SketchedTune.of(new Sketch(1).push("1.1").pull("1.1").push("1.1"));
        EditionTune entry = new EditionTune(
                NASTY,
                "a b.musicxml",
                List.of("a b.both.musicxml"),
                tune,
                style,
                List.of("direction", "buttons"),
                Difficulty.of(tune),
                new TreeSet<>(TuneThings.of(tune)),
                List.of("Count."),
                List.of("The bellows are tight."));
        return new Edition(
                "Book",
                tune.instrument(),
                style,
                List.of(new Edition.Paragraph("Hello", NASTY)),
                List.of(entry),
                List.of(new Edition.Refused("Other", "other.musicxml", "No button gives F4.")),
                "They stand so.");
    }

    /** Every tag that opens is closed in turn, but for those that HTML leaves open. */
    private static void assertNested(String html) {
        Deque<String> open = new ArrayDeque<>();
        Matcher tags = Pattern.compile("<(/?)([a-z0-9]+)[^>]*?(/?)>").matcher(html);
        while (tags.find()) {
            String name = tags.group(2);
            if (!tags.group(1).isEmpty()) {
                assertEquals(open.poll(), name, html.substring(0, tags.end()));
            } else if (tags.group(3).isEmpty() && !name.equals("meta")) {
                open.push(name);
            }
        }
        assertTrue(open.isEmpty(), open.toString());
    }

    @Test
    void theIndexIsWellFormed() {
        assertNested(IndexHtml.of(edition()));
    }

    @Test
    void theFrontPageIsWellFormed() throws DiagnosedException {
        assertNested(FrontHtml.of(new FrontPage(edition())));
    }

    @Test
    void noTitleIsMarkupNorTurnsTheLine() throws DiagnosedException {
        for (String page : List.of(IndexHtml.of(edition()), FrontHtml.of(new FrontPage(edition())))) {
            assertFalse(page.contains("<script"), page);
            assertFalse(page.contains("\u202E"), page);
        }
    }

    @Test
    void pagesLoadNothingFromElsewhere() throws DiagnosedException {
        for (String page : List.of(IndexHtml.of(edition()), FrontHtml.of(new FrontPage(edition())))) {
            assertFalse(page.replace("http://www.w3.org/2000/svg", "").contains("://"), page);
        }
    }

    @Test
    void theIndexLinksTheSheets() {
        String index = IndexHtml.of(edition());
        assertTrue(index.contains("href=\"./a%20b.musicxml\""), index);
        assertTrue(index.contains("href=\"./a%20b.both.musicxml\""), index);
    }

    @Test
    void thePageIsLeftToTheEngraver() {
        String csv = IndexCsv.of(edition());
        assertTrue(csv.startsWith("no.,tune,page,"), csv);
        assertTrue(csv.lines().skip(1).findFirst().orElse("").contains("\",,"), csv);
    }

    @Test
    void aLineOfCommasEndsAsTheStandardSays() {
        assertEquals(3, IndexCsv.of(edition()).split("\r\n", -1).length - 1);
    }

    @Test
    void whatIsNotInTheEditionIsToldWithItsReason() {
        assertTrue(IndexText.of(edition()).contains("No button gives F4."));
        assertTrue(IndexHtml.of(edition()).contains("Other (other.musicxml): No button gives F4."));
        assertTrue(IndexCsv.of(edition()).contains("Not in this edition: No button gives F4."));
    }

    @Test
    void theLegendHasTheMarksThatOccurAndNoOthers() throws DiagnosedException {
        String front = FrontText.of(new FrontPage(edition()));
        assertTrue(front.contains("close the bellows from this note on"), front);
        assertFalse(front.contains("index, middle"), "no fingers are printed: " + front);
        assertFalse(front.contains("chord of"), "the left hand is not printed: " + front);
    }

    @Test
    void everyCautionNamesItsSourceOrThatThereIsNone() throws DiagnosedException {
        String front = FrontText.of(new FrontPage(edition())).replaceAll("\\s+", " ");
        for (Caution caution : Caution.all(STYLE.book())) {
            assertFalse(caution.source().isBlank());
            assertTrue(front.contains(caution.text() + " (" + caution.source() + ")"), caution.text());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"german", "french", "italian", "spanish", "dutch", "swedish", "catalan"})
    void noEnglishIsLeftButWhatIsAQuotation(String id) throws DiagnosedException {
        Style style = Sketch.style(id);
        Edition edition = edition(style);
        FrontPage front = new FrontPage(edition);
        String all = FrontText.of(front) + FrontHtml.of(front) + IndexText.of(edition) + IndexCsv.of(edition);
        String index = IndexHtml.of(edition);
        assertTrue(index.contains("<html lang=\"" + style.language() + "\">"), index);
        for (BookText text : BookText.values()) {
            String english = STYLE.book().of(text).text();
            boolean same = english.equals(style.book().of(text).text());
            assertFalse(!same && english.length() > 12 && (all + index).contains(english), english);
        }
        assertFalse(
                Pattern.compile("\\b(push|pull|grade|row 1)\\b")
                        .matcher(all + index)
                        .find(),
                all + index);
    }
}
