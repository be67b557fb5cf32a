package org.bellowscribe.diagnostic;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Says in words what stands between the tool and a file. */
public final class Obstacle {

    private Obstacle() {}

    /** Returns words that fit into brackets, such as {@code permission is denied}. */
    public static String of(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "permission is denied";
        }
        if (e instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
            return "a file stands where a folder must be";
        }
        String reason = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
        return reason == null ? e.getClass().getSimpleName() : reason;
    }
}
