package org.bellowscribe.definition;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Opens data files of a user. */
public final class DefinitionFile {

    private DefinitionFile() {}

    /**
     * Opens a file.
     *
     * @throws IOException if it cannot be opened, or is a folder, a device or a pipe, which may never end
     */
    public static InputStream open(Path file) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            String reason = Files.isDirectory(file) ? "it is a folder" : "it is no file but a device or a pipe";
            throw new FileSystemException(file.toString(), null, reason);
        }
        return Files.newInputStream(file);
    }
}
