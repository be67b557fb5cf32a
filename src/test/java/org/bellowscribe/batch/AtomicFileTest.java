package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {

    @TempDir
    Path folder;

    private static void write(Path target, String text) throws DiagnosedException {
        AtomicFile.write(target, text.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void foldersOnTheWayAreMadeAndNothingElseIsLeft() throws Exception {
        write(folder.resolve("a/b/tune.xml"), "x");
        assertEquals("x", Files.readString(folder.resolve("a/b/tune.xml")));
        assertEquals(List.of("a"), names());
        try (Stream<Path> files = Files.list(folder.resolve("a/b"))) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void olderFileIsReplacedWhole() throws Exception {
        write(folder.resolve("tune.xml"), "a long text");
        write(folder.resolve("tune.xml"), "short");
        assertEquals("short", Files.readString(folder.resolve("tune.xml")));
        assertEquals(List.of("tune.xml"), names());
    }

    @Test
    void fileInTheWayOfAFolderIsSaidAndStays() throws Exception {
        write(folder.resolve("out"), "not a folder");
        DiagnosedException e = assertThrows(DiagnosedException.class, () -> write(folder.resolve("out/tune.xml"), "x"));
        Diagnostic error = e.diagnostics().get(0);
        assertEquals(DiagnosticCode.UNWRITABLE, error.code());
        assertTrue(error.text().contains("a file stands where a folder must be"), error.text());
        assertEquals("not a folder", Files.readString(folder.resolve("out")));
    }

    @Test
    void folderInTheWayOfTheFileStays() throws Exception {
        Files.createDirectories(folder.resolve("tune.xml/inside"));
        assertThrows(DiagnosedException.class, () -> write(folder.resolve("tune.xml"), "x"));
        assertTrue(Files.isDirectory(folder.resolve("tune.xml/inside")));
        assertEquals(List.of("tune.xml"), names());
    }

    @Test
    void permissionsOfTheOlderFileStay() throws Exception {
        Path file = folder.resolve("tune.xml");
        write(file, "a");
        Assumptions.assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        write(file, "b");
        assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void linkIsNeitherFollowedNorReplaced() throws Exception {
        write(folder.resolve("real/tune.xml"), "a");
        Path link = folder.resolve("link.xml");
        try {
            Files.createSymbolicLink(link, Path.of("real", "tune.xml"));
            Files.createSymbolicLink(folder.resolve("loose.xml"), Path.of("real", "nothing.xml"));
        } catch (UnsupportedOperationException | IOException e) {
            Assumptions.abort("skipped: no links here");
        }
        for (String name : List.of("link.xml", "loose.xml")) {
            DiagnosedException e = assertThrows(DiagnosedException.class, () -> write(folder.resolve(name), "b"));
            assertTrue(e.diagnostics().get(0).text().contains("it is a link"), e::getMessage);
        }
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("a", Files.readString(folder.resolve("real/tune.xml")));
        assertEquals(List.of("link.xml", "loose.xml", "real"), names());
    }
}
