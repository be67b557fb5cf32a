package org.bellowscribe.musicxml;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * The central directory of a zip file. Source: PKWARE, APPNOTE.TXT - .ZIP File Format Specification, sections 4.3.7,
 * 4.3.12 and 4.3.16.
 *
 * <p>The JDK's own reader cannot be used because it hides the offsets, without which the other entries could not be kept
 * byte by byte.
 *
 * @param items the entries in the directory's order
 * @param start place of the directory
 * @param end place after its last record
 * @param trailer place of the end record
 */
record ZipDirectory(List<ZipItem> items, int start, int end, int trailer) {

    static final int LOCAL_HEADER = 30;
    static final int CENTRAL_HEADER = 46;
    static final int TRAILER = 22;
    static final int LOCAL_SIGNATURE = 0x04034b50;
    static final int CENTRAL_SIGNATURE = 0x02014b50;
    static final int DESCRIPTOR_SIGNATURE = 0x08074b50;
    private static final int TRAILER_SIGNATURE = 0x06054b50;

    /** Entries that a compressed score may have. */
    static final int MAX_ITEMS = 1_000;

    private static final int LONGEST_COMMENT = 0xFFFF;

    /**
     * Finds the entries of a zip file.
     *
     * @throws DiagnosedException if the file is cut short, damaged, or of a kind that no score needs
     */
    static ZipDirectory of(byte[] zip) throws DiagnosedException {
        ByteBuffer in = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
        int trailer = trailer(in);
        int count = in.getShort(trailer + 10) & 0xFFFF;
        if (count > MAX_ITEMS) {
            throw MxlRefusal.of(
                    "The compressed file has " + count + " entries, and a score may have " + MAX_ITEMS + ".");
        }
        int start = in.getInt(trailer + 16);
        List<ZipItem> items = new ArrayList<>();
        int at = start;
        for (int i = 0; i < count; i++) {
            ZipItem item = item(in, at, start);
            items.add(item);
            at = item.headerEnd();
        }
        if (at > trailer) {
            throw damaged();
        }
        return new ZipDirectory(List.copyOf(items), start, at, trailer);
    }

    private static int trailer(ByteBuffer in) throws DiagnosedException {
        int last = in.limit() - TRAILER;
        for (int i = last; i >= Math.max(0, last - LONGEST_COMMENT); i--) {
            if (in.getInt(i) == TRAILER_SIGNATURE && i + TRAILER + (in.getShort(i + 20) & 0xFFFF) <= in.limit()) {
                return i;
            }
        }
        throw damaged();
    }

    private static ZipItem item(ByteBuffer in, int at, int directory) throws DiagnosedException {
        if (at < 0 || at > in.limit() - CENTRAL_HEADER || in.getInt(at) != CENTRAL_SIGNATURE) {
            throw damaged();
        }
        int nameLength = in.getShort(at + 28) & 0xFFFF;
        int end = at + CENTRAL_HEADER + nameLength + (in.getShort(at + 30) & 0xFFFF) + (in.getShort(at + 32) & 0xFFFF);
        int local = in.getInt(at + 42);
        if (end > in.limit() || local < 0 || local > directory - LOCAL_HEADER || in.getInt(local) != LOCAL_SIGNATURE) {
            throw damaged();
        }
        int data = local + LOCAL_HEADER + (in.getShort(local + 26) & 0xFFFF) + (in.getShort(local + 28) & 0xFFFF);
        int packedSize = in.getInt(at + 20);
        if (packedSize < 0 || data > directory - packedSize) {
            throw damaged();
        }
        return new ZipItem(
                new String(in.array(), at + CENTRAL_HEADER, nameLength, StandardCharsets.UTF_8).replace('\\', '/'),
                in.getShort(at + 8) & 0xFFFF,
                in.getShort(at + 10) & 0xFFFF,
                in.getInt(at + 12),
                in.getInt(at + 16),
                packedSize,
                in.getInt(at + 24),
                at,
                end,
                local,
                data);
    }

    private static DiagnosedException damaged() {
        return MxlRefusal.of("The compressed file is cut short or damaged.", MxlRefusal.DOWNLOAD_AGAIN);
    }
}
