package org.bellowscribe.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class BookProposalTest {

    private static final BookProposal PROPOSAL = new BookProposal(
            "Tom & \"Jerry\" <1>",
            "scores",
            "dg-21",
            List.of("Nothing -- more-"),
            List.of(
                    new BookProposal.Entry("a.musicxml", "A", "G", ""),
                    new BookProposal.Entry("b.musicxml", "B", "", "No button gives F4 -- alas.")));

    private static BookFile.Examined read() throws DiagnosedException, IOException {
        return BookFile.read(new ByteArrayInputStream(PROPOSAL.xml().getBytes(StandardCharsets.UTF_8)), "d-10");
    }

    @Test
    void aProposalIsABookFileWithoutProblems() throws DiagnosedException, IOException {
        assertEquals(List.of(), read().problems());
    }

    @Test
    void theTitleIsKept() throws DiagnosedException, IOException {
        assertEquals("Tom & \"Jerry\" <1>", read().book().title());
    }

    @Test
    void whatCannotBePlayedIsLeftOut() throws DiagnosedException, IOException {
        Book book = read().book();
        assertEquals(
                List.of("a.musicxml"),
                book.tunesOn(book.instruments().get(0)).stream()
                        .map(BookTune::file)
                        .toList());
    }
}
