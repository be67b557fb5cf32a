package org.bellowscribe.musicxml.read;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.audiveris.proxymusic.util.Marshalling.UnmarshallingException;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/** Turns a lean score into ProxyMusic's objects. */
final class ScoreUnmarshaller {

    private ScoreUnmarshaller() {}

    /** Builds what is built once and shared by all threads; costs half a second the first time. */
    static void warm() {
        try {
            Marshalling.getContext(ScorePartwise.class);
        } catch (jakarta.xml.bind.JAXBException e) {
            throw new IllegalStateException("ProxyMusic's own classes must fit together.", e);
        }
    }

    static ScorePartwise unmarshal(LeanScore lean) throws DiagnosedException {
        byte[] bytes = lean.xml().getBytes(StandardCharsets.UTF_8);
        try {
            Object score = Marshalling.unmarshal(new ByteArrayInputStream(bytes));
            if (score instanceof ScorePartwise partwise) {
                return partwise;
            }
        } catch (UnmarshallingException e) {
            throw new DiagnosedException(unreadable());
        }
        throw new DiagnosedException(unreadable());
    }

    private static Diagnostic unreadable() {
        return Diagnostic.error(DiagnosticCode.NOT_MUSICXML, Place.FILE, "The score cannot be read as MusicXML.");
    }
}
