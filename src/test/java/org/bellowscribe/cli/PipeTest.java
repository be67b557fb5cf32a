package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The input {@code -}: a score comes from standard input and goes to standard output. */
class PipeTest {

    private static final byte[] SCALE = bytes(ScoreText.of("scale", "D4 E4 F#4 G4"));

    @TempDir
    Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] compressed(byte[] score) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
            zip.write(bytes("<container><rootfiles><rootfile full-path=\"a.xml\"/></rootfiles></container>"));
            zip.putNextEntry(new ZipEntry("a.xml"));
            zip.write(score);
        }
        return bytes.toByteArray();
    }

    @Test
    void resultIsThatOfTheFileAndNothingElseIsPrinted() throws IOException {
        Path file = Files.write(folder.resolve("scale.xml"), SCALE);
        CommandRun.of("mark", file.toString(), "--out", folder + "/out");
        CommandRun run = CommandRun.piped(SCALE, "mark", "-");
        assertEquals(0, run.code(), run.err());
        assertEquals(Files.readString(folder.resolve("out/scale.xml"), StandardCharsets.ISO_8859_1), run.out());
        assertTrue(run.err().contains("1 tune marked, 0 not marked"), run.err());
    }

    @Test
    void strippingGivesTheBytesBack() {
        byte[] marked = CommandRun.piped(SCALE, "mark", "-").out().getBytes(StandardCharsets.ISO_8859_1);
        CommandRun run = CommandRun.piped(marked, "strip", "-");
        assertEquals(0, run.code(), run.err());
        assertEquals(new String(SCALE, StandardCharsets.ISO_8859_1), run.out());
    }

    @Test
    void compressedScoreStaysCompressed() throws IOException {
        byte[] zip = compressed(SCALE);
        String marked = CommandRun.piped(zip, "mark", "-").out();
        assertTrue(marked.startsWith("PK"), marked.substring(0, 10));
        CommandRun run = CommandRun.piped(marked.getBytes(StandardCharsets.ISO_8859_1), "strip", "-");
        assertEquals(new String(zip, StandardCharsets.ISO_8859_1), run.out());
    }

    @Test
    void nothingComesOfARefusedScore() {
        CommandRun refused = CommandRun.piped(bytes(ScoreText.of("flat", "D4 F4 D4 F4")), "mark", "-");
        assertEquals(1, refused.code());
        assertEquals("", refused.out());
        assertTrue(refused.err().contains("standard input: measure 1, part P1: error [no-button]"), refused.err());
        CommandRun empty = CommandRun.piped(new byte[0], "strip", "-");
        assertEquals(1, empty.code());
        assertEquals("", empty.out());
        assertTrue(empty.err().contains("standard input: error [empty-file]"), empty.err());
    }

    @Test
    void optionsThatNeedFilesAreWrongUse() {
        for (String option : new String[] {"--in-place", "--record", "--out=" + folder}) {
            CommandRun run = CommandRun.piped(SCALE, "mark", "-", option);
            assertEquals(2, run.code());
            assertEquals("", run.out());
            assertTrue(run.err().contains("goes to standard output"), run.err());
        }
        CommandRun run = CommandRun.piped(SCALE, "strip", "-", "samples");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("The input - stands alone"), run.err());
    }
}
