package org.bellowscribe.cli;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.batch.ledger.ContentHash;

/** Which tool this is: for people by its version, for what is kept by the contents of all that Java has loaded it from. */
final class ToolVersion {

    private static final int BLOCK = 1 << 16;

    private ToolVersion() {}

    /** Asked for once: what Java was started from does not change under it. */
    private static final class Started {
        private static final String HASH = ofClassPath();
    }

    /** Returns the version for people, as it was packaged. */
    static String name() {
        String version = ToolVersion.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }

    /** Returns a hash that another build, another library or another plug-in changes. */
    static String hash() {
        return Started.HASH;
    }

    private static String ofClassPath() {
        StringBuilder hashes = new StringBuilder();
        for (String place : System.getProperty("java.class.path", "").split(File.pathSeparator, -1)) {
            hashes.append(hash(Path.of(place))).append(' ');
        }
        return ContentHash.of(hashes.toString());
    }

    private static String hash(Path place) {
        ContentHash hash = new ContentHash();
        try {
            for (Path file : files(place)) {
                add(file, hash);
            }
        } catch (IOException e) {
            // What is not there cannot be loaded either.
        }
        return hash.text();
    }

    private static List<Path> files(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            return Files.exists(place) ? List.of(place) : List.of();
        }
        try (Stream<Path> below = Files.walk(place)) {
            return below.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void add(Path file, ContentHash hash) throws IOException {
        byte[] block = new byte[BLOCK];
        try (InputStream in = Files.newInputStream(file)) {
            for (int count = in.read(block); count >= 0; count = in.read(block)) {
                hash.add(block, count);
            }
        }
    }
}
