package org.bellowscribe.musicxml.read;

import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.UnmarshallerHandler;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.xml.sax.SAXException;

/** Turns a lean score into ProxyMusic's objects. */
final class ScoreUnmarshaller {

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
            UnmarshallerHandler handler = Marshalling.getContext(ScorePartwise.class)
                    .createUnmarshaller()
                    .getUnmarshallerHandler();
            lean.pieces().tell(handler);
            if (handler.getResult() instanceof ScorePartwise partwise) {
                return partwise;
            }
        } catch (JAXBException | SAXException e) {
            throw new DiagnosedException(unreadable());
        }
        throw new DiagnosedException(unreadable());
    }

    private static Diagnostic unreadable() {
        return Diagnostic.error(DiagnosticCode.NOT_MUSICXML, Place.FILE, "The score cannot be read as MusicXML.");
    }
}
