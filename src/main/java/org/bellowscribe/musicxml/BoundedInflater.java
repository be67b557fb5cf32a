package org.bellowscribe.musicxml;

import java.io.ByteArrayOutputStream;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Packs and unpacks the entries of a compressed file, counting what comes out. */
final class BoundedInflater {

    /** Times an entry may grow when it is unpacked, once it is larger than {@link #RATIO_COUNTS_FROM}. */
    static final int MAX_RATIO = 200;

    /** Unpacked bytes up to which no ratio is looked at: small scores of many equal measures pack very well. */
    static final int RATIO_COUNTS_FROM = 1 << 20;

    private static final int BUFFER = 1 << 16;

    private BoundedInflater() {}

    /**
     * Unpacks a raw deflate stream.
     *
     * @throws DiagnosedException if the stream is broken, or what comes out is more than a score needs
     */
    static byte[] inflate(byte[] bytes, int from, int length) throws DiagnosedException {
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(bytes, from, length);
            ByteArrayOutputStream out = new ByteArrayOutputStream(Math.min(BUFFER, length * 4 + 1));
            byte[] buffer = new byte[BUFFER];
            while (!inflater.finished()) {
                int count = inflater.inflate(buffer);
                if (count == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
                    throw MxlRefusal.of("The compressed score ends too early.", MxlRefusal.DOWNLOAD_AGAIN);
                }
                out.write(buffer, 0, count);
                requireReasonable(out.size(), length);
            }
            return out.toByteArray();
        } catch (DataFormatException e) {
            throw MxlRefusal.of("The compressed score is damaged.", MxlRefusal.DOWNLOAD_AGAIN);
        } finally {
            inflater.end();
        }
    }

    /** Packs bytes as a raw deflate stream. */
    static byte[] deflate(byte[] bytes) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
        try {
            deflater.setInput(bytes);
            deflater.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 8 + 64);
            byte[] buffer = new byte[BUFFER];
            while (!deflater.finished()) {
                out.write(buffer, 0, deflater.deflate(buffer));
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static void requireReasonable(int unpacked, int packed) throws DiagnosedException {
        if (unpacked > ScoreDocument.MAX_BYTES) {
            throw MxlRefusal.of("The compressed score unpacks to more than " + ScoreDocument.MAX_BYTES + " bytes.");
        }
        if (unpacked > RATIO_COUNTS_FROM && unpacked / MAX_RATIO > packed) {
            throw MxlRefusal.of(
                    "The compressed score unpacks to more than " + MAX_RATIO + " times its " + packed + " bytes.");
        }
    }
}
