package org.bellowscribe.batch;

import java.nio.file.Path;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Where the files of a tune go. */
@FunctionalInterface
public interface ResultWriter {

    /** Writes each file whole or not at all. */
    ResultWriter TO_DISK = AtomicFile::write;

    /**
     * Takes a file.
     *
     * @throws DiagnosedException if it cannot be written; what stood there before is then as it was
     */
    void write(Path target, byte[] bytes) throws DiagnosedException;
}
