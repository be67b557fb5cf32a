package org.bellowscribe.delivery;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;

/** Reads and writes scores by ProxyMusic alone: what any tool on it would take. */
final class PlainJaxb {

    private PlainJaxb() {}

    /** Reads each file that is named, and writes it into memory. */
    public static void main(String[] files) throws Exception {
        for (String file : files) {
            ScorePartwise score = (ScorePartwise) Marshalling.unmarshal(Files.newInputStream(Path.of(file)));
            Marshalling.marshal(score, new ByteArrayOutputStream(), true, 2);
        }
    }
}
