package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** Writes a file whole or not at all. */
public final class AtomicFile {

    private AtomicFile() {}

    /**
     * Writes to a temporary file beside the target, then moves it there. Folders on the way are made. A link, a device or a
     * pipe in the place of the target is never followed nor replaced.
     *
     * @throws DiagnosedException if that cannot be done; the target is then as before
     */
    public static void write(Path target, byte[] bytes) throws DiagnosedException {
        Path temporary = null;
        try {
            requireOwnFile(target);
            Path file = target.toAbsolutePath();
            Path folder = file.getParent();
            Files.createDirectories(folder);
            temporary = Files.createTempFile(folder, ".bellowscribe", ".part");
            Files.write(temporary, bytes);
            // A temporary file is for its owner alone; the result is like any other file of the folder.
            if (Files.exists(file)) {
                copyPermissions(file, temporary);
            } else {
                Files.deleteIfExists(temporary);
                Files.write(temporary, bytes);
            }
            move(temporary, file);
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNWRITABLE,
                    Place.FILE,
                    "%s cannot be written (%s).".formatted(target, Obstacle.of(e)),
                    "Maybe choose another folder with --out, or see to the permissions of this one."));
        } finally {
            remove(temporary);
        }
    }

    private static void requireOwnFile(Path target) throws FileSystemException {
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (Files.isSymbolicLink(target)) {
            throw new FileSystemException(target.toString(), null, "it is a link, and links are not followed");
        }
        if (Files.isDirectory(target)) {
            throw new FileSystemException(target.toString(), null, "it is a folder");
        }
        if (!Files.isRegularFile(target)) {
            throw new FileSystemException(target.toString(), null, "it is no file but a device or a pipe");
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        try {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        } catch (UnsupportedOperationException e) {
            // A file system without such permissions has nothing to copy.
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void remove(@Nullable Path temporary) {
        try {
            if (temporary != null) {
                Files.deleteIfExists(temporary);
            }
        } catch (IOException e) {
            // It is gone or will be: the result stands either way.
        }
    }
}
