package org.bellowscribe.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.junit.jupiter.api.Test;

class BookFileTest {

    private static BookFile.Examined examined(String xml) throws DiagnosedException, IOException {
        return BookFile.read(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)), "dg-21");
    }

    private static Book read(String content) throws DiagnosedException, IOException {
        BookFile.Examined examined = examined("<book title=\"T\">" + content + "</book>");
        assertEquals(List.of(), examined.problems());
        return examined.book();
    }

    private static List<String> problems(String xml) throws IOException {
        try {
            return examined(xml).problems().stream()
                    .flatMap(BookFileTest::lines)
                    .toList();
        } catch (DiagnosedException e) {
            return e.diagnostics().stream().flatMap(BookFileTest::lines).toList();
        }
    }

    private static Stream<String> lines(Diagnostic remark) {
        return Stream.concat(Stream.of(remark.place().describe() + ": " + remark.text()), remark.advice().stream());
    }

    @Test
    void aBookThatSaysNothingHasTheUsualInstrumentAndAllScoresBesideIt() throws DiagnosedException, IOException {
        Book book = read("");
        assertEquals("dg-21", book.instruments().get(0).id());
        assertEquals(".", book.folder());
        assertFalse(book.byLearning());
        assertEquals(List.of(), book.tunes());
        assertEquals(Set.of(Book.Print.NEW, Book.Print.NOTES), book.prints());
    }

    @Test
    void textsOfTheFrontPageKeepTheirOrder() throws DiagnosedException, IOException {
        Book book = read("<text heading=\"H\">One\n   line.</text><text>Two.</text>");
        assertEquals(List.of(new BookText("H", "One line."), new BookText("", "Two.")), book.texts());
    }

    @Test
    void aTuneHasItsNotesTitleAndPosition() throws DiagnosedException, IOException {
        BookTune tune = examined("<book title=\"T\" order=\"by-learning\"><tune file=\"a.xml\" title=\"A\""
                        + " position=\"1\"><note>Slowly.</note></tune></book>")
                .book()
                .tunes()
                .get(0);
        assertEquals("a.xml", tune.file());
        assertEquals("A", tune.title());
        assertEquals(1, tune.position());
        assertEquals(List.of("Slowly."), tune.notes());
    }

    @Test
    void anInstrumentFileGivesItsNameToTheFolder() throws DiagnosedException, IOException {
        assertEquals(
                "my-box",
                read("<instrument id=\"boxes/my-box.xml\"/>")
                        .instruments()
                        .get(0)
                        .folder());
    }

    @Test
    void nothingIsPrintedIfNoneIsSaid() throws DiagnosedException, IOException {
        assertTrue(
                examined("<book title=\"T\" print=\"none\"/>").book().prints().isEmpty());
    }

    @Test
    void aFileThatIsNoBookIsToldSo() throws IOException {
        assertEquals(
                List.of(
                        "line 1, column 11: The root element is <pattern>, but a book file holds one <book>.",
                        "Maybe another file is meant; the command book new FOLDER begins a book file."),
                problems("<pattern/>"));
    }

    @Test
    void brokenXmlIsToldWithItsPlace() throws IOException {
        assertEquals(
                List.of(
                        "line 2, column 3: <tune> of line 1 is not closed where </book> stands.",
                        "Maybe write </tune> before it, or /> at the end of its tag if nothing is in it."),
                problems("<book title=\"T\"><tune file=\"a.xml\">\n</book>"));
    }

    @Test
    void aMisspelledAttributeIsAnsweredWithTheNearest() throws IOException {
        assertEquals(
                List.of(
                        "line 1, column 34: Attribute 'maner' is not allowed to appear in element 'book'.",
                        "Maybe write manner."),
                problems("<book title=\"T\" maner=\"learner\"/>"));
    }

    @Test
    void twoEntriesForOneTuneAreAnErrorAtTheSecond() throws IOException {
        assertEquals(
                List.of(
                        "line 2, column 23: The tune ./a.xml is there twice; the first is at line 1, column 37.",
                        "Maybe leave one of them out."),
                problems("<book title=\"T\"><tune file=\"a.xml\"/>\n<tune file=\"./a.xml\"/> </book>"));
    }

    @Test
    void keyAndTranspositionContradictEachOther() throws IOException {
        assertEquals(
                List.of(
                        "line 1, column 59: key=\"D\" and transpose=\"2\" contradict each other.",
                        "Maybe leave one of them out."),
                problems("<book title=\"T\"><tune file=\"a.xml\" key=\"D\" transpose=\"2\"/></book>"));
    }

    @Test
    void anExceptionIsForAnInstrumentOfTheBook() throws IOException {
        assertEquals(
                List.of("line 1, column 82: The book has no instrument d-11.", "Maybe d-10 is meant."),
                problems(
                        "<book title=\"T\"><instrument id=\"d-10\"/><tune file=\"a.xml\"><on instrument=\"d-11\"/></tune>"
                                + "</book>"));
    }

    @Test
    void twoEditionsNeedTwoFolders() throws IOException {
        assertEquals(
                List.of(
                        "line 1, column 86: The folder A is there twice; the first is at line 1, column 52.",
                        "Maybe leave one of them out."),
                problems(
                        "<book title=\"T\"><instrument id=\"dg-21\" folder=\"a\"/><instrument id=\"d-10\" folder=\"A\"/>"
                                + "</book>"));
    }

    @Test
    void positionsGoWithAnOrderByLearning() throws IOException {
        assertEquals(
                List.of(
                        "line 1, column 50: The position 1 goes with order=\"by-learning\".",
                        "Maybe add that to <book>, or leave the position out: tunes stand as they are listed."),
                problems("<book title=\"T\"><tune file=\"a.xml\" position=\"1\"/></book>"));
    }

    @Test
    void noPositionIsBeyondTheLastTune() throws IOException {
        assertEquals(
                List.of("line 1, column 70: The position 2 is beyond the last of 1 tunes.", "Maybe position=\"1\"."),
                problems("<book title=\"T\" order=\"by-learning\"><tune file=\"a.xml\" position=\"2\"/></book>"));
    }

    @Test
    void nothingOutsideTheFileIsRead() {
        assertThrows(DiagnosedException.class, () -> examined("<!DOCTYPE book SYSTEM \"x\"><book title=\"T\"/>"));
    }
}
