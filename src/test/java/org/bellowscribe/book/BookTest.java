package org.bellowscribe.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

/** What holds for a tune on an instrument. */
class BookTest {

    private static Book read(String xml) throws DiagnosedException, IOException {
        return BookFile.read(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)), "dg-21")
                .book();
    }

    private static Map<String, String> wishes(Book book) {
        Map<String, String> values = new TreeMap<>();
        book.wishes(book.instruments().get(0), book.tunes().get(0))
                .byName()
                .forEach((name, wish) -> values.put(name, wish.value()));
        return values;
    }

    @Test
    void whatIsSaidOfTheBookHoldsForEveryTune() throws DiagnosedException, IOException {
        Book book = read("<book title=\"T\" manner=\"learner\"><tune file=\"a.xml\"/></book>");
        assertEquals(Map.of("manner", "learner"), wishes(book));
    }

    @Test
    void theInstrumentGoesBeforeTheBookAndTheTuneBeforeTheInstrument() throws DiagnosedException, IOException {
        Book book = read(
                "<book title=\"T\" manner=\"a\" style=\"a\" marks=\"a\"><instrument id=\"dg-21\" style=\"b\" marks=\"b\"/>"
                        + "<tune file=\"a.xml\" marks=\"c\"/></book>");
        assertEquals(Map.of("manner", "a", "style", "b", "marks", "c"), wishes(book));
    }

    @Test
    void whatATuneSaysOfAnInstrumentGoesBeforeAll() throws DiagnosedException, IOException {
        Book book = read("<book title=\"T\"><instrument id=\"d-10\"/><tune file=\"a.xml\" tempo=\"80\">"
                + "<on instrument=\"d-10\" tempo=\"60\"/></tune></book>");
        assertEquals(Map.of("tempo", "60"), wishes(book));
    }

    @Test
    void aNearerKeyTakesThePlaceOfAWiderTransposition() throws DiagnosedException, IOException {
        Book book = read("<book title=\"T\" transpose=\"auto\"><tune file=\"a.xml\" key=\"G\"/></book>");
        assertEquals(Map.of("key", "G"), wishes(book));
    }

    @Test
    void aTuneCanBeLeftOutOnOneInstrument() throws DiagnosedException, IOException {
        Book book = read("<book title=\"T\"><instrument id=\"dg-21\"/><instrument id=\"d-10\"/><tune file=\"a.xml\">"
                + "<on instrument=\"d-10\" leave-out=\"yes\"/></tune></book>");
        assertEquals(book.tunes(), book.tunesOn(book.instruments().get(0)));
        assertEquals(List.of(), book.tunesOn(book.instruments().get(1)));
    }
}
