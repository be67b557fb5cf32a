package org.bellowscribe.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/** Standard input, if the process was given one. */
final class StandardInput {

    private static final Path FIRST_OPEN = Path.of("/proc/self/fd/0");

    private StandardInput() {}

    /** Returns standard input; reading it fails if it is closed. */
    static InputStream open() {
        return isClosed() ? new Closed() : System.in;
    }

    // Where it is closed, the first file that Java opens for itself takes its place, and would be read as a score.
    private static boolean isClosed() {
        try {
            Path home = Path.of(System.getProperty("java.home")).toRealPath();
            return FIRST_OPEN.toRealPath().startsWith(home);
        } catch (IOException e) {
            // No such folder on this system, or no file behind it.
            return false;
        }
    }

    private static final class Closed extends InputStream {
        @Override
        public int read() throws IOException {
            throw new IOException("it is closed");
        }

        @Override
        public int read(byte[] bytes, int start, int length) throws IOException {
            return read();
        }
    }
}
