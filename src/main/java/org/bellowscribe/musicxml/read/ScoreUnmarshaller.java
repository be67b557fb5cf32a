package org.bellowscribe.musicxml.read;

import jakarta.xml.bind.JAXBContext;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.UnmarshallerHandler;
import java.util.Map;
import java.util.Objects;
import org.audiveris.proxymusic.ScorePartwise;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.glassfish.jaxb.runtime.api.JAXBRIContext;
import org.xml.sax.SAXException;

/** Turns a lean score into ProxyMusic's objects. */
final class ScoreUnmarshaller {

    private static final class Holder {
        static final JAXBContext CONTEXT = context();
    }

    private ScoreUnmarshaller() {}

    /** Builds what is built once and shared by all threads; a seventh of a short run. */
    static void warm() {
        Objects.requireNonNull(Holder.CONTEXT);
    }

    // ProxyMusic's own context knows all of its classes, which takes half as long again.
    private static JAXBContext context() {
        try {
            return JAXBContext.newInstance(
                    new Class<?>[] {ScorePartwise.class},
                    Map.of(JAXBRIContext.ANNOTATION_READER, new LeanAnnotations()));
        } catch (JAXBException e) {
            throw new IllegalStateException("ProxyMusic's own classes must fit together.", e);
        }
    }

    static ScorePartwise unmarshal(LeanScore lean) throws DiagnosedException {
        try {
            UnmarshallerHandler handler = Holder.CONTEXT.createUnmarshaller().getUnmarshallerHandler();
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
