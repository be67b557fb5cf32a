package org.bellowscribe.musicxml;

import java.util.Arrays;
import java.util.zip.CRC32;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/**
 * A compressed score ({@code .mxl}). Immutable.
 *
 * <p>Only the entries that matter are unpacked, into memory, and nothing is ever written under an entry's name. When marks
 * are put in, the packed bytes of the unmarked score are kept as an entry of their own, {@value #KEPT}: a score can be
 * packed in many ways, so this is the only sure way back to the very same file.
 */
final class MxlFile {

    /** Name of the entry that holds the score without marks, as it was packed. Readers of scores pass it over. */
    static final String KEPT = "META-INF/bellowscribe-original";

    private final byte[] file;
    private final ZipDirectory directory;
    private final ZipItem item;
    private final byte[] score;

    private MxlFile(byte[] file, ZipDirectory directory, ZipItem item, byte[] score) {
        this.file = file;
        this.directory = directory;
        this.item = item;
        this.score = score;
    }

    /** Tells whether bytes are those of a zip file. */
    static boolean isOne(byte[] bytes) {
        return bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] < 9 && bytes[3] < 9;
    }

    /**
     * Opens a compressed file.
     *
     * @throws DiagnosedException if it is damaged, holds no score or holds too much
     */
    static MxlFile open(byte[] file) throws DiagnosedException {
        ZipDirectory directory = ZipDirectory.of(file);
        ZipItem item = scoreItem(file, directory);
        if (directory.items().stream().anyMatch(other -> !other.equals(item) && other.overlaps(item))) {
            throw MxlRefusal.of("Two entries of the compressed file share bytes.", MxlRefusal.DOWNLOAD_AGAIN);
        }
        if (item.hasDescriptor() && ZipEntryPatch.descriptor(file, item) < 0) {
            throw MxlRefusal.of("The compressed score does not end as its header says.", MxlRefusal.DOWNLOAD_AGAIN);
        }
        return new MxlFile(file, directory, item, unpack(file, item));
    }

    /** Returns the bytes of the score. */
    byte[] score() {
        return score;
    }

    /** Returns the file with a score that holds no marks; the very file before any marks if it is that score. */
    byte[] withBareScore(byte[] bare) {
        ZipEntryPatch patch = new ZipEntryPatch(file, directory);
        ZipItem kept = MxlContainer.find(directory.items(), KEPT);
        if (kept == null) {
            patch.replaceData(item, pack(bare), checksum(bare), bare.length);
        } else {
            boolean same = Arrays.equals(keptScore(kept), bare);
            byte[] packed = same && item.method() == kept.method() ? packedBytes(kept) : pack(bare);
            patch.replaceData(item, packed, checksum(bare), bare.length);
            patch.remove(kept);
        }
        return patch.bytes();
    }

    /** Returns the file with a score that holds marks, and what is needed to find the way back to the bare score. */
    byte[] withMarkedScore(byte[] marked, byte[] bare) {
        ZipEntryPatch patch = new ZipEntryPatch(file, directory);
        patch.replaceData(item, pack(marked), checksum(marked), marked.length);
        ZipItem kept = MxlContainer.find(directory.items(), KEPT);
        if (kept != null && !Arrays.equals(keptScore(kept), bare)) {
            patch.remove(kept);
        } else if (kept == null && item.method() == ZipItem.DEFLATED && Arrays.equals(score, bare)) {
            patch.add(KEPT, item, packedBytes(item));
        }
        return patch.bytes();
    }

    private static ZipItem scoreItem(byte[] file, ZipDirectory directory) throws DiagnosedException {
        ZipItem container = MxlContainer.find(directory.items(), MxlContainer.NAME);
        if (container == null) {
            ZipItem only = MxlContainer.onlyScore(directory.items());
            if (only == null) {
                throw MxlRefusal.of(
                        "The file is compressed but has no " + MxlContainer.NAME
                                + " that says which entry is the score.",
                        "Maybe unpack it and give the score inside.");
            }
            return only;
        }
        String path = MxlContainer.scorePath(unpack(file, container));
        ZipItem item = MxlContainer.find(directory.items(), path);
        if (item == null) {
            throw MxlRefusal.of(
                    "The table of contents names '" + TextPlace.shortened(path)
                            + "' as the score, and the compressed file has no such entry.",
                    "Maybe unpack it and give the score inside.");
        }
        return item;
    }

    private static byte[] unpack(byte[] file, ZipItem item) throws DiagnosedException {
        if (!item.isReadable()) {
            throw MxlRefusal.of("The score is encrypted or packed in a way not known here.", "Maybe unpack it first.");
        }
        byte[] bytes = item.method() == ZipItem.STORED
                ? Arrays.copyOfRange(file, item.data(), item.dataEnd())
                : BoundedInflater.inflate(file, item.data(), item.packedSize());
        if (bytes.length != item.size() || checksum(bytes) != item.crc()) {
            throw MxlRefusal.of("The compressed score does not agree with its checksum.", MxlRefusal.DOWNLOAD_AGAIN);
        }
        return bytes;
    }

    /** Returns the score that was kept; null if someone has damaged it. */
    private byte @Nullable [] keptScore(ZipItem kept) {
        try {
            return unpack(file, kept);
        } catch (DiagnosedException e) {
            return null;
        }
    }

    private byte[] packedBytes(ZipItem any) {
        return Arrays.copyOfRange(file, any.data(), any.dataEnd());
    }

    private byte[] pack(byte[] bytes) {
        return item.method() == ZipItem.STORED ? bytes : BoundedInflater.deflate(bytes);
    }

    private static int checksum(byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return (int) crc.getValue();
    }
}
