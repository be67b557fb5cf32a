package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.ZipEntry;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.junit.jupiter.api.Test;

class HostileMxlTest {

    private static final String SCORE = TinyScore.of("<note/>");

    private static String refusal(byte[] mxl) {
        DiagnosedException refusal = assertThrows(DiagnosedException.class, () -> ScoreDocument.decode(mxl));
        assertEquals(DiagnosticCode.UNREADABLE, refusal.diagnostics().get(0).code());
        return refusal.diagnostics().get(0).text();
    }

    private static byte[] withEntry(byte[] score) {
        return new TinyMxl()
                .container("score.xml")
                .entry(new ZipEntry("score.xml"), score)
                .bytes();
    }

    @Test
    void aZipBombIsStopped() {
        byte[] bomb = withEntry(new byte[80 << 20]);
        assertTrue(bomb.length < 100_000);
        assertTrue(refusal(bomb).startsWith("The compressed score unpacks to more than 200 times its "), refusal(bomb));
    }

    @Test
    void aZipBombInTheTableOfContentsIsStopped() {
        byte[] bomb = new TinyMxl()
                .entry(new ZipEntry("META-INF/container.xml"), new byte[80 << 20])
                .bytes();
        assertTrue(refusal(bomb).startsWith("The compressed score unpacks to more than 200 times its "));
    }

    @Test
    void aLargeScoreThatPacksBadlyIsStoppedAtItsSize() {
        byte[] noise = new byte[1 << 20];
        new Random(1).nextBytes(noise);
        byte[] large = new byte[70 << 20];
        for (int i = 0; i < large.length; i += 64 << 10) {
            System.arraycopy(noise, i % (noise.length - 1_000), large, i, 1_000);
        }
        assertEquals("The compressed score unpacks to more than 67108864 bytes.", refusal(withEntry(large)));
    }

    @Test
    void aSmallScoreMayPackVeryWell() throws DiagnosedException {
        String score = TinyScore.of("<note/>".repeat(100_000));
        byte[] mxl = TinyMxl.of(score);
        assertTrue(score.length() / mxl.length > 200);
        assertEquals(100_000, ScoreDocument.decode(mxl).noteCount());
    }

    @Test
    void otherEntriesAreNeverUnpacked() throws DiagnosedException {
        byte[] mxl = new TinyMxl()
                .container("score.xml")
                .deflated("score.xml", SCORE)
                .entry(new ZipEntry("audio.wav"), new byte[80 << 20])
                .bytes();
        assertEquals(SCORE, ScoreDocument.decode(mxl).text());
    }

    @Test
    void tooManyEntriesAreRefused() {
        TinyMxl zip = new TinyMxl().container("score.xml").deflated("score.xml", SCORE);
        for (int i = 0; i < 999; i++) {
            zip.stored("e" + i, "");
        }
        assertEquals("The compressed file has 1001 entries, and a score may have 1000.", refusal(zip.bytes()));
    }

    @Test
    void aPathOutOfTheFileIsOnlyANameThatIsNotThere() {
        byte[] mxl = new TinyMxl()
                .container("../../etc/passwd")
                .deflated("score.xml", SCORE)
                .bytes();
        assertEquals(
                "The table of contents names '../../etc/passwd' as the score, and the compressed file has no such entry.",
                refusal(mxl));
    }

    @Test
    void anEntryNamedOutOfTheFileIsReadLikeAnyOther() throws DiagnosedException {
        byte[] mxl = new TinyMxl()
                .container("../../score.xml")
                .deflated("../../score.xml", SCORE)
                .bytes();
        assertEquals(SCORE, ScoreDocument.decode(mxl).text());
    }

    @Test
    void aTableOfContentsWithoutScoreIsRefused() {
        byte[] mxl =
                new TinyMxl().deflated("META-INF/container.xml", "<container/>").bytes();
        assertEquals("The table of contents of the compressed file names no score.", refusal(mxl));
    }

    @Test
    void withoutATableOfContentsTwoScoresAreRefused() {
        byte[] mxl =
                new TinyMxl().deflated("a.xml", SCORE).deflated("b.xml", SCORE).bytes();
        assertEquals(
                "The file is compressed but has no META-INF/container.xml that says which entry is the score.",
                refusal(mxl));
    }

    @Test
    void anEncryptedScoreIsRefused() throws DiagnosedException {
        byte[] mxl = TinyMxl.of(SCORE);
        mxl[ZipDirectory.of(mxl).items().get(1).header() + 8] |= 1;
        assertEquals("The score is encrypted or packed in a way not known here.", refusal(mxl));
    }

    @Test
    void aWrongChecksumIsRefused() throws DiagnosedException {
        byte[] mxl =
                new TinyMxl().container("score.xml").stored("score.xml", SCORE).bytes();
        mxl[ZipDirectory.of(mxl).items().get(1).data() + 20] ^= 1;
        assertEquals("The compressed score does not agree with its checksum.", refusal(mxl));
    }

    @Test
    void entriesThatShareBytesAreRefused() throws DiagnosedException {
        byte[] mxl = new TinyMxl()
                .container("score.xml")
                .deflated("score.xml", SCORE)
                .deflated("other.xml", SCORE)
                .bytes();
        ZipDirectory directory = ZipDirectory.of(mxl);
        int score = directory.items().get(1).header() + 42;
        int other = directory.items().get(2).header() + 42;
        System.arraycopy(mxl, score, mxl, other, 4);
        assertEquals("Two entries of the compressed file share bytes.", refusal(mxl));
    }

    @Test
    void aFileCutShortIsRefusedWhereverItIsCut() {
        byte[] mxl = TinyMxl.of(SCORE);
        for (int length = 4; length < mxl.length; length++) {
            byte[] cut = Arrays.copyOf(mxl, length);
            assertEquals("The compressed file is cut short or damaged.", refusal(cut));
        }
    }

    @Test
    void noDamageOfOneByteBreaksMoreThanTheFile() {
        byte[] mxl = TinyMxl.of(SCORE);
        int read = 0;
        for (int i = 4; i < mxl.length; i++) {
            byte[] damaged = mxl.clone();
            damaged[i] ^= 0x7F;
            try {
                ScoreDocument score = ScoreDocument.decode(damaged);
                assertEquals(SCORE, score.text());
                byte[] changed = score.withText(SCORE + " ").encode();
                assertEquals(SCORE + " ", ScoreDocument.decode(changed).text());
                read++;
            } catch (DiagnosedException e) {
                assertEquals(1, e.diagnostics().size());
            }
        }
        assertTrue(read > 0 && read < mxl.length / 2, "read " + read);
    }

    @Test
    void textThatBeginsLikeAZipIsNone() {
        byte[] text = "PK tunes".getBytes(StandardCharsets.US_ASCII);
        DiagnosedException refusal = assertThrows(DiagnosedException.class, () -> ScoreDocument.decode(text));
        assertEquals(DiagnosticCode.NOT_XML, refusal.diagnostics().get(0).code());
    }
}
