package org.bellowscribe.musicxml.read;

import jakarta.xml.bind.JAXBException;
import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.SafeXml;

/** Turns a lean score into ProxyMusic's objects. */
final class ScoreUnmarshaller {

    // A factory costs as much as a short tune; each thread keeps one.
    private static final ThreadLocal<XMLInputFactory> STREAMS = ThreadLocal.withInitial(SafeXml::streamFactory);

    private ScoreUnmarshaller() {}

    /** Builds what is built once and shared by all threads; costs half a second the first time. */
    static void warm() {
        try {
            Marshalling.getContext(ScorePartwise.class);
        } catch (JAXBException e) {
            throw new IllegalStateException("ProxyMusic's own classes must fit together.", e);
        }
    }

    static ScorePartwise unmarshal(LeanScore lean) throws DiagnosedException {
        try {
            XMLStreamReader reader = STREAMS.get().createXMLStreamReader(new StringReader(lean.xml()));
            Object score = Marshalling.getContext(ScorePartwise.class)
                    .createUnmarshaller()
                    .unmarshal(reader);
            if (score instanceof ScorePartwise partwise) {
                return partwise;
            }
        } catch (JAXBException | XMLStreamException e) {
            throw new DiagnosedException(unreadable());
        }
        throw new DiagnosedException(unreadable());
    }

    private static Diagnostic unreadable() {
        return Diagnostic.error(DiagnosticCode.NOT_MUSICXML, Place.FILE, "The score cannot be read as MusicXML.");
    }
}
