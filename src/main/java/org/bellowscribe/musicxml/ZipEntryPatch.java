package org.bellowscribe.musicxml;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Changes entries of a zip file and keeps every other byte: the other entries, their order, times, extra fields and
 * comments.
 */
final class ZipEntryPatch {

    private static final int VERSION = 20;

    private final byte[] file;
    private final ByteBuffer in;
    private final ZipDirectory directory;
    private final ZipSplice splice;
    private @Nullable ZipItem removed;
    private byte[] addedHeader = new byte[0];

    ZipEntryPatch(byte[] file, ZipDirectory directory) {
        this.file = file;
        this.in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        this.directory = directory;
        this.splice = new ZipSplice(file);
    }

    /**
     * Finds the checksum in the descriptor behind an entry's bytes.
     *
     * @return place of the checksum, which the packed size and the size follow; -1 if there is none
     */
    static int descriptor(byte[] file, ZipItem item) {
        ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        int at = item.dataEnd();
        if (at > file.length - 4) {
            return -1;
        }
        at += in.getInt(at) == ZipDirectory.DESCRIPTOR_SIGNATURE ? 4 : 0;
        boolean fits = at <= file.length - 20 && in.getInt(at) == item.crc() && in.getInt(at + 4) == item.packedSize();
        return fits && (in.getInt(at + 8) == item.size() || isLong(in, at, item)) ? at : -1;
    }

    /** Gives an entry other bytes, packed in the same way as before. */
    void replaceData(ZipItem item, byte[] packed, int crc, int size) {
        splice.replace(item.data(), item.dataEnd(), packed);
        putSizes(item.header() + 16, crc, packed.length, size);
        int local = item.local() + 14;
        if (in.getInt(local) == item.crc()
                && in.getInt(local + 4) == item.packedSize()
                && in.getInt(local + 8) == item.size()) {
            putSizes(local, crc, packed.length, size);
        }
        int descriptor = item.hasDescriptor() ? descriptor(file, item) : -1;
        if (descriptor >= 0 && in.getInt(descriptor + 8) == item.size()) {
            putSizes(descriptor, crc, packed.length, size);
        } else if (descriptor >= 0) {
            splice.putInt(descriptor, crc);
            splice.putInt(descriptor + 4, packed.length);
            splice.putInt(descriptor + 12, size);
        }
    }

    /** Takes an entry out. */
    void remove(ZipItem item) {
        splice.replace(item.local(), item.dataEnd(), new byte[0]);
        splice.replace(item.header(), item.headerEnd(), new byte[0]);
        removed = item;
    }

    /** Adds an entry behind all others that unpacks to the same as another. */
    void add(String name, ZipItem like, byte[] packed) {
        byte[] nameBytes = name.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer local = buffer(ZipDirectory.LOCAL_HEADER + nameBytes.length + packed.length);
        local.putInt(ZipDirectory.LOCAL_SIGNATURE);
        putCommon(local, like, packed.length, nameBytes.length);
        local.put(nameBytes).put(packed);

        ByteBuffer header = buffer(ZipDirectory.CENTRAL_HEADER + nameBytes.length);
        header.putInt(ZipDirectory.CENTRAL_SIGNATURE).putShort((short) VERSION);
        putCommon(header, like, packed.length, nameBytes.length);
        header.putShort((short) 0).putShort((short) 0).putShort((short) 0).putInt(0);
        header.putInt(splice.moved(directory.start())).put(nameBytes);

        splice.replace(directory.start(), directory.start(), local.array());
        splice.replace(directory.end(), directory.end(), header.array());
        addedHeader = header.array();
    }

    /** Returns the changed file. */
    byte[] bytes() {
        int start = splice.moved(directory.start());
        int growth = addedHeader.length - (removed == null ? 0 : removed.headerEnd() - removed.header());
        int added = (addedHeader.length > 0 ? 1 : 0) - (removed == null ? 0 : 1);
        for (ZipItem item : directory.items()) {
            int local = splice.moved(item.local());
            if (!item.equals(removed) && local != item.local()) {
                splice.putInt(item.header() + 42, local);
            }
        }
        int trailer = directory.trailer();
        splice.putShort(trailer + 8, in.getShort(trailer + 8) + added);
        splice.putShort(trailer + 10, in.getShort(trailer + 10) + added);
        splice.putInt(trailer + 12, in.getInt(trailer + 12) + growth);
        splice.putInt(trailer + 16, start);
        return splice.bytes();
    }

    private static boolean isLong(ByteBuffer in, int at, ZipItem item) {
        return in.getInt(at + 8) == 0 && in.getInt(at + 12) == item.size() && in.getInt(at + 16) == 0;
    }

    private void putSizes(int at, int crc, int packedSize, int size) {
        splice.putInt(at, crc);
        splice.putInt(at + 4, packedSize);
        splice.putInt(at + 8, size);
    }

    private static void putCommon(ByteBuffer header, ZipItem like, int packedSize, int nameLength) {
        header.putShort((short) VERSION).putShort((short) 0).putShort((short) like.method());
        header.putInt(like.time()).putInt(like.crc()).putInt(packedSize).putInt(like.size());
        header.putShort((short) nameLength).putShort((short) 0);
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
