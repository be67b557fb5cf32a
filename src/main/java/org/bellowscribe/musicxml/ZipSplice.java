package org.bellowscribe.musicxml;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes pieces of a file and keeps all other bytes. Changes must not overlap; offsets are those of the old file. */
final class ZipSplice {

    private record Change(int from, int to, byte[] bytes) {
        int growth() {
            return bytes.length - (to - from);
        }
    }

    private final byte[] file;
    private final List<Change> changes = new ArrayList<>();

    ZipSplice(byte[] file) {
        this.file = file;
    }

    /** Puts bytes in the place of those from an offset to before another. */
    void replace(int from, int to, byte[] bytes) {
        changes.add(new Change(from, to, bytes));
    }

    /** Puts a number of four bytes at an offset. */
    void putInt(int at, int value) {
        replace(
                at,
                at + 4,
                ByteBuffer.allocate(4)
                        .order(ByteOrder.LITTLE_ENDIAN)
                        .putInt(value)
                        .array());
    }

    /** Puts a number of two bytes at an offset. */
    void putShort(int at, int value) {
        replace(at, at + 2, new byte[] {(byte) value, (byte) (value >> 8)});
    }

    /** Returns where a byte of the old file stands after the changes made so far; one put in at its place goes before it. */
    int moved(int offset) {
        return offset
                + changes.stream()
                        .filter(change -> change.to <= offset)
                        .mapToInt(Change::growth)
                        .sum();
    }

    /** Returns the new file. */
    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream(file.length + 1024);
        int done = 0;
        changes.sort(Comparator.comparingInt(Change::from));
        for (Change change : changes) {
            out.write(file, done, change.from - done);
            out.writeBytes(change.bytes);
            done = change.to;
        }
        out.write(file, done, file.length - done);
        return out.toByteArray();
    }
}
