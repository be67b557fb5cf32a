package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import org.bellowscribe.Shared;
import org.bellowscribe.annotation.Annotation;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xmlunit.builder.DiffBuilder;
import org.xmlunit.diff.Diff;

/** The laws of marking, on every score of the shared collection; every seventh is marked once for the dearer laws. */
@Tag("shared")
class SharedScoresTest {

    private static final List<Marked> SOME = new ArrayList<>();

    private record Marked(Path file, ScoreDocument score, List<Annotation> marks, ScoreDocument marked) {}

    @BeforeAll
    static void markSome() throws Exception {
        for (Path file : Shared.sample("corpus")) {
            ScoreDocument score = ScoreDocument.decode(Files.readAllBytes(file));
            List<Annotation> marks = SampleMarks.on(score);
            SOME.add(new Marked(file, score, marks, score.withMarks(marks)));
        }
    }

    @AfterAll
    static void forget() {
        SOME.clear();
    }

    @Test
    void marksLeaveNoTrace() throws Exception {
        for (Path file : Shared.scores("corpus")) {
            byte[] bytes = Files.readAllBytes(file);
            ScoreDocument score = ScoreDocument.decode(bytes);
            assertArrayEquals(bytes, score.encode(), file::toString);

            List<Annotation> marks = SampleMarks.on(score);
            byte[] marked = score.withMarks(marks).encode();
            ScoreDocument again = ScoreDocument.decode(marked);
            assertEquals(score.noteCount(), again.noteCount(), file::toString);
            assertEveryMarkIsThere(file, again, marks);
            assertArrayEquals(bytes, again.withoutMarks().encode(), file::toString);
        }
    }

    private static void assertEveryMarkIsThere(Path file, ScoreDocument marked, List<Annotation> marks) {
        String text = marked.text();
        int above = count(text, " id=\"bellowscribe-w");
        int below = count(text, " name=\"bellowscribe-words\"");
        long words = marks.stream().filter(Annotation.Words.class::isInstance).count();
        assertEquals(words, above + below, file::toString);
        assertEquals(marked.noteCount() * 2 + below, count(text, " name=\"bellowscribe-"), file::toString);
    }

    @Test
    void markingTwiceGivesTheSameBytes() throws Exception {
        for (Marked each : SOME) {
            byte[] marked = each.marked().encode();
            assertArrayEquals(
                    marked, ScoreDocument.decode(marked).withMarks(each.marks()).encode(), each.file()::toString);
        }
    }

    @Test
    void notesAreCountedAsAParserCountsThem() throws Exception {
        for (Marked each : SOME) {
            ScoreDocument score = each.score();
            assertEquals(EntityNotes.count(score.text()), score.noteCount(), each.file()::toString);
        }
    }

    @Test
    void marksAreNeverAgainstTheSchema() throws Exception {
        int valid = 0;
        for (Marked each : SOME) {
            List<SchemaFinding> findings = SchemaCheck.check(each.marked().text());
            if (findings.isEmpty()) {
                valid++;
            } else {
                // Marks may not repair anything either: as many findings as before.
                int before = SchemaCheck.check(each.score().text()).size();
                assertEquals(before, findings.size(), () -> each.file() + ": " + findings);
            }
        }
        assertTrue(valid > 10, "only " + valid + " scores were valid");
    }

    @Test
    void onlyOurElementsDiffer() throws Exception {
        for (Marked each : SOME) {
            Diff difference = DiffBuilder.compare(source(each.score().text()))
                    .withTest(source(each.marked().text()))
                    .withDocumentBuilderFactory(documents())
                    .ignoreWhitespace()
                    .withNodeFilter(node -> !isOurs(node))
                    .build();
            assertFalse(difference.hasDifferences(), each.file() + ": " + difference);
        }
    }

    private static StreamSource source(String text) {
        return new StreamSource(new StringReader(text));
    }

    private static DocumentBuilderFactory documents() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory;
    }

    private static boolean isOurs(Node node) {
        return node instanceof Element element
                && (element.getAttribute("name") + element.getAttribute("id")).startsWith("bellowscribe-");
    }

    private static int count(String text, String part) {
        return text.split(part, -1).length - 1;
    }
}
