package org.bellowscribe.musicxml.read;

import jakarta.xml.bind.JAXBContext;
import jakarta.xml.bind.JAXBException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.bellowscribe.Shared;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;

/**
 * What reading and writing a tune costs, against unmarshalling and marshalling it with plain JAXB in the same run. A
 * program, not a test: times are for people to look at.
 *
 * <p>It takes less than twice the time of one plain unmarshal and marshal: three runs, warm, on a machine with other work,
 * best rounds 3.77 against 2.10, 3.43 against 1.87 and 3.41 against 2.12 ms, so 1.6 to 1.8 times; by the medians of the
 * rounds 1.5 to 1.8. A score is parsed once for the reader and the schema; JAXB is told the lean score without another
 * parse. 6,000 scores in one run under {@code java -Xmx128m}: 4 minutes on one thread, 214 MB of the process after 40 s and
 * 223 MB at the end.
 */
public final class ReadingCost {

    private static final int ROUNDS = 12;

    // As safe as ours, and made once as ours is.
    private static final XMLInputFactory STREAMS = streams();

    private ReadingCost() {}

    private static XMLInputFactory streams() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
        return factory;
    }

    /** Prints milliseconds a tune, warm. */
    public static void main(String[] args) throws Exception {
        List<byte[]> files = new ArrayList<>();
        for (Path file : args.length > 0 ? List.of(Path.of(args[0])) : Shared.scores("corpus/tunes")) {
            byte[] bytes = Files.readAllBytes(file);
            if (file.toString().endsWith("xml") && bytes[0] == '<' && reads(bytes)) {
                files.add(bytes);
            }
        }
        for (int round = 1; round <= ROUNDS; round++) {
            long start = cpu();
            for (byte[] bytes : files) {
                plain(bytes);
            }
            long middle = cpu();
            for (byte[] bytes : files) {
                ours(bytes);
            }
            long end = cpu();
            double plain = (middle - start) / 1e6 / files.size();
            double ours = (end - middle) / 1e6 / files.size();
            System.out.printf(
                    Locale.ROOT,
                    "round %d: %d tunes, plain %.2f ms, ours %.2f ms, ratio %.2f%n",
                    round,
                    files.size(),
                    plain,
                    ours,
                    ours / plain);
        }
    }

    // Time of the processor, so that other programs do not count.
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static boolean reads(byte[] bytes) {
        try {
            ours(bytes);
            return true;
        } catch (DiagnosedException e) {
            return false;
        }
    }

    private static void plain(byte[] bytes) throws JAXBException, XMLStreamException {
        JAXBContext context = Marshalling.getContext(ScorePartwise.class);
        XMLStreamReader reader = STREAMS.createXMLStreamReader(new ByteArrayInputStream(bytes));
        Object score = context.createUnmarshaller().unmarshal(reader);
        context.createMarshaller().marshal(score, new ByteArrayOutputStream());
    }

    // Decoding, reading, the schema, a lyric on every note, and the bytes again.
    private static void ours(byte[] bytes) throws DiagnosedException {
        ScoreDocument document = ScoreDocument.decode(bytes);
        String text = document.withoutMarks().text();
        Tune tune =
                ScoreReader.readChecked(text, "tune", ReadingOptions.DEFAULT).tune();
        List<Annotation> marks = new ArrayList<>();
        for (Event event : tune.events()) {
            if (!event.isRest()) {
                marks.add(new Annotation.Syllable(event.firstNoteIndex(), 0, "buttons", "3"));
            }
        }
        if (document.withMarks(marks).encode().length < bytes.length) {
            throw new IllegalStateException(new String(bytes, StandardCharsets.UTF_8));
        }
    }
}
