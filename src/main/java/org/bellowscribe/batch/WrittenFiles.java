package org.bellowscribe.batch;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.batch.ledger.ContentHash;
import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/** The files of one tune: written, or only compared with those that stand there. */
final class WrittenFiles implements ResultWriter {

    private final boolean writes;
    private final Map<Path, String> hashes = new LinkedHashMap<>();
    private final Map<Path, byte[]> contents = new LinkedHashMap<>();

    /**
     * Creates it without files.
     *
     * @param writes false if nothing is to be written
     */
    WrittenFiles(boolean writes) {
        this.writes = writes;
    }

    @Override
    public void write(Path target, byte[] bytes) throws DiagnosedException {
        if (writes) {
            ResultWriter.TO_DISK.write(target, bytes);
        }
        hashes.put(target, ContentHash.of(bytes));
        contents.put(target, bytes);
    }

    /** Returns the hash of each file, in the order in which they came. */
    Map<Path, String> hashes() {
        return hashes;
    }

    /** Returns the content of a file; null if none came. */
    byte @Nullable [] content(Path target) {
        return contents.get(target);
    }

    /** Returns those that do not stand on the disk as they came. */
    List<Path> differing() {
        return hashes.entrySet().stream()
                .filter(file -> !file.getValue().equals(Ledger.hash(file.getKey())))
                .map(Map.Entry::getKey)
                .toList();
    }
}
