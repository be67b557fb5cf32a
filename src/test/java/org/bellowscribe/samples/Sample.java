package org.bellowscribe.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.SafeXml;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * A tune of the book in {@code samples/}, or the one that is refused.
 *
 * @param name name of the file without its ending
 * @param text the whole file
 */
record Sample(String name, String text) {

    private static final String ENDING = ".musicxml";

    /** Returns the whole book in alphabetical order. */
    static List<Sample> all() {
        try (Stream<Path> files = Files.walk(Path.of("samples"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(ENDING))
                    .sorted()
                    .map(file -> of(file.substring(0, file.length() - ENDING.length())))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the tune of a file, named without its ending. */
    static Sample of(String name) {
        try {
            Path inBook = Path.of("samples", "book", name + ENDING);
            Path file = Files.exists(inBook) ? inBook : Path.of("samples", "refused", name + ENDING);
            return new Sample(name, Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the melody as our own reader reads it. */
    Tune tune() throws DiagnosedException {
        return ScoreReader.read(text, name, ReadingOptions.DEFAULT);
    }

    /** Returns the root element. */
    Element root() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return factory.newDocumentBuilder().parse(SafeXml.source(text)).getDocumentElement();
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError(name, e);
        }
    }

    /** Returns the elements of a name at any depth below another, in document order. */
    static List<Element> find(Element below, String name) {
        NodeList found = below.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    /** Returns the name, which then stands in the names of the tests. */
    @Override
    public String toString() {
        return name;
    }
}
