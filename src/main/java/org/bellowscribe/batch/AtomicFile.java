package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** Writes a file whole or not at all. */
public final class AtomicFile {

    /** How the names of temporary files begin and end. */
    private static final String NAME = ".bellowscribe-";

    private static final String ENDING = ".part";

    /** No write takes so long: what is older was left by a run that was killed. */
    private static final Duration OLD = Duration.ofMinutes(10);

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
            temporary = file.resolveSibling(NAME + UUID.randomUUID() + ENDING);
            Files.write(temporary, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            if (Files.exists(file)) {
                copyPermissions(file, temporary);
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

    /**
     * Removes temporary files from a folder that a run has left there that was killed.
     *
     * @param now the time
     */
    public static void removeLeftovers(Path folder, Instant now) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, NAME + "*" + ENDING)) {
            for (Path file : files) {
                if (Files.getLastModifiedTime(file).toInstant().isBefore(now.minus(OLD))) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // They harm nobody.
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
