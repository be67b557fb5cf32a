package org.bellowscribe.musicxml;

import jakarta.xml.bind.JAXBElement;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Marshaller;
import java.io.StringWriter;
import java.util.regex.Pattern;
import javax.xml.namespace.QName;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;

/** Writes single elements of MusicXML as text, to stand within a score. */
final class Fragment {

    /** JAXB declares at every outermost element what only links of a score need; none of ours is one. */
    private static final Pattern LINKS = Pattern.compile(" xmlns:\\w+=\"http://www\\.w3\\.org/1999/xlink\"");

    private final Marshaller marshaller;

    Fragment() {
        try {
            marshaller = Marshalling.getContext(ScorePartwise.class).createMarshaller();
            marshaller.setProperty(Marshaller.JAXB_FRAGMENT, true);
        } catch (JAXBException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Returns an element as text.
     *
     * @param name its name
     * @param content what it is
     */
    <T> String text(String name, Class<T> type, T content) {
        StringWriter text = new StringWriter();
        try {
            marshaller.marshal(new JAXBElement<>(new QName(name), type, content), text);
        } catch (JAXBException e) {
            throw new IllegalStateException("The element (%s) must be of MusicXML.".formatted(name), e);
        }
        return LINKS.matcher(text.getBuffer()).replaceFirst("");
    }
}
