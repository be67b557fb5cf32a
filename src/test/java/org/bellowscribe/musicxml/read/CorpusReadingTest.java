package org.bellowscribe.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.bellowscribe.Shared;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Every score of the corpus and the suite ends in a tune whose times add up, or in remarks. */
class CorpusReadingTest {

    @Tag("shared")
    @Test
    void everyTuneOfTheCorpusIsRead() throws IOException {
        assertEquals(Set.of("tune"), read("corpus/tunes").keySet());
    }

    @Test
    void everyScoreOfTheSuiteIsReadOrRefusedWithReason() throws IOException {
        TreeMap<String, Integer> outcomes = read("corpus/suite");
        assertEquals(Set.of("NO_BUTTON", "NO_NOTES", "tune"), outcomes.keySet());
        assertTrue(outcomes.get("tune") > 60, outcomes.toString());
    }

    private static TreeMap<String, Integer> read(String folder) throws IOException {
        TreeMap<String, Integer> outcomes = new TreeMap<>();
        for (Path file : Shared.scores(folder)) {
            outcomes.merge(outcome(file), 1, Integer::sum);
        }
        return outcomes;
    }

    private static String outcome(Path file) throws IOException {
        try {
            ScoreDocument document = ScoreDocument.decode(Files.readAllBytes(file));
            everyNoteIsCounted(file, document);
            Tune tune = ScoreReader.read(document.text(), "fallback", ReadingOptions.DEFAULT);
            eventsFollowWithoutGapOrOverlap(file, tune);
            return "tune";
        } catch (DiagnosedException e) {
            return e.diagnostics().get(0).code().name();
        } catch (SAXException e) {
            throw new AssertionError(e);
        }
    }

    /** The notes that are read and the notes that are marked are counted by different code. */
    private static void everyNoteIsCounted(Path file, ScoreDocument document) throws DiagnosedException, SAXException {
        List<String> notes = new ArrayList<>();
        DefaultHandler counter = new DefaultHandler() {
            @Override
            public void startElement(String uri, String localName, String name, Attributes attributes) {
                if (name.equals("note")) {
                    notes.add(attributes.getValue("id"));
                }
            }
        };
        LeanScoreParser.parse(document.text()).pieces().tell(counter);
        assertEquals(document.noteCount(), notes.size(), file.toString());
    }

    private static void eventsFollowWithoutGapOrOverlap(Path file, Tune tune) {
        List<Fraction> starts = new ArrayList<>();
        Fraction end = Fraction.ZERO;
        for (Measure measure : tune.measures()) {
            starts.add(end);
            end = end.plus(measure.length());
        }
        if (Set.copyOf(tune.playOrder().measures()).size() < tune.measures().size()) {
            return;
        }
        Fraction reached = Fraction.ZERO;
        for (Event event : tune.events()) {
            assertEquals(reached, starts.get(event.measure()).plus(event.onset()), file + " event " + event.index());
            reached = reached.plus(event.duration());
        }
        assertEquals(end, reached, file.toString());
    }
}
