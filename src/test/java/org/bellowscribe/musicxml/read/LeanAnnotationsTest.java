package org.bellowscribe.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.xml.bind.JAXBContext;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.UnmarshallerHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.bellowscribe.Shared;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;

/** JAXB reads as much of a lean score as it would with all of ProxyMusic's classes. */
class LeanAnnotationsTest {

    private static final List<String> VALUES =
            List.of("1", "C", "yes", "start", "quarter", "major", "add", "regular", "left", "forward", "explicit", "G");

    @Test
    void everyElementAndAttributeOfTheVocabularyIsHeard() throws Exception {
        LeanScore lean = LeanScoreParser.parse(element("score-partwise"));
        assertEquals(List.of(), lean.odd());
        assertEquals(Map.of(), lean.bad());
        String heard = heard(lean);
        for (Set<String> names : Vocabulary.CHILDREN.values()) {
            names.forEach(name -> assertTrue(heard.matches("(?s).*<" + name + "[ />].*"), name));
        }
        for (Set<String> names : Vocabulary.ATTRIBUTES.values()) {
            names.forEach(name -> assertTrue(heard.contains(" " + name + "=\""), name));
        }
        assertEquals(heardByAll(lean), heard);
    }

    @Test
    void scoresOfTheProjectAreHeardAsByAllOfProxyMusic() throws Exception {
        assertTrue(heardAsByAll(scores(Path.of("samples"))) > 5);
        assertTrue(heardAsByAll(scores(Path.of("src", "test", "resources"))) > 50);
    }

    @Test
    void scoresOfTheCorpusAreHeardAsByAllOfProxyMusic() throws Exception {
        assertTrue(heardAsByAll(Shared.scores("corpus")) > 100);
    }

    private static List<Path> scores(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    /** Returns how many of the files are scores. */
    private static int heardAsByAll(List<Path> files) throws IOException, JAXBException, SAXException {
        int scores = 0;
        for (Path file : files) {
            try {
                LeanScore lean = LeanScoreParser.parse(
                        ScoreDocument.decode(Files.readAllBytes(file)).text());
                assertEquals(heardByAll(lean), heard(lean), file.toString());
                scores++;
            } catch (DiagnosedException e) {
                // No score, and refused before JAXB is told of it.
            }
        }
        return scores;
    }

    private static String heard(LeanScore lean) throws DiagnosedException, JAXBException {
        return written(ScoreUnmarshaller.unmarshal(lean));
    }

    private static String heardByAll(LeanScore lean) throws JAXBException, SAXException {
        UnmarshallerHandler handler = all().createUnmarshaller().getUnmarshallerHandler();
        lean.pieces().tell(handler);
        return written((ScorePartwise) handler.getResult());
    }

    private static String written(ScorePartwise score) throws JAXBException {
        StringWriter text = new StringWriter();
        all().createMarshaller().marshal(score, text);
        return text.toString();
    }

    private static JAXBContext all() throws JAXBException {
        return Marshalling.getContext(ScorePartwise.class);
    }

    /** Returns an element with all that is kept within it. */
    private static String element(String name) {
        String attributes = Vocabulary.ATTRIBUTES.getOrDefault(name, Set.of()).stream()
                .map(each -> " %s='%s'".formatted(each, value(name + "@" + each)))
                .sorted()
                .collect(Collectors.joining());
        String within = Vocabulary.CHILDREN.getOrDefault(name, Set.of()).stream()
                .sorted()
                .map(LeanAnnotationsTest::element)
                .collect(Collectors.joining());
        String text = Vocabulary.isText(name) ? value(name) : "";
        return "<%s%s>%s%s</%1$s>".formatted(name, attributes, text, within);
    }

    private static String value(String name) {
        return VALUES.stream()
                .filter(each -> Vocabulary.isValid(name, each))
                .findFirst()
                .orElseThrow();
    }
}
