package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettlingTest {

    private static final String WHOLE = "<?xml version='1.0'?>\n<!-- a --><pins>\n<pin/></pins>\n";

    @TempDir
    Path folder;

    private long now;
    private final Settling settling = new Settling(() -> now);

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void fileThatLooksTheSameTwiceHasSettled() throws IOException {
        Path file = file("a.xml", WHOLE);
        settling.add(Set.of(file));
        assertEquals(Set.of(), settling.settled());
        assertEquals(Set.of(file), settling.settled());
        assertEquals(Set.of(), settling.settled());
    }

    @Test
    void fileThatGrowsHasNot() throws IOException {
        Path file = file("a.xml", WHOLE);
        settling.add(Set.of(file));
        settling.settled();
        file("a.xml", WHOLE + " ");
        assertEquals(Set.of(), settling.settled());
        assertEquals(Set.of(file), settling.settled());
    }

    @Test
    void halfAFileIsWaitedForTwoSecondsThenLetThrough() throws IOException {
        Path file = file("a.xml", "<pins><pin/>");
        settling.add(Set.of(file));
        settling.settled();
        assertEquals(Set.of(), settling.settled());
        now = 1_900_000_000L;
        assertEquals(Set.of(), settling.settled());
        now = 2_100_000_000L;
        assertEquals(Set.of(file), settling.settled());
    }

    @Test
    void fileThatIsGoneHasSettled() {
        Path file = folder.resolve("gone.xml");
        settling.add(Set.of(file));
        assertEquals(Set.of(file), settling.settled());
    }

    @Test
    void everyBeginningOfAFileLooksLikeHalfAFile() throws IOException {
        for (int length = 0; length < WHOLE.strip().length(); length++) {
            assertFalse(Settling.isWhole(file("a.xml", WHOLE.substring(0, length))), length + " letters");
        }
        assertTrue(Settling.isWhole(file("a.xml", WHOLE)));
    }

    @Test
    void halfACompressedFileHasNoTableOfContents() throws IOException {
        Path file = folder.resolve("a.mxl");
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("score.xml"));
            zip.write(WHOLE.getBytes(StandardCharsets.UTF_8));
        }
        assertTrue(Settling.isWhole(file));
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length - 10));
        assertFalse(Settling.isWhole(file));
    }
}
