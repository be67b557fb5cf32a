package org.bellowscribe.musicxml;

/**
 * An entry of a zip file and where its pieces stand. All offsets are 0-based.
 *
 * @param name name as it can be compared: slashes forward
 * @param flags general purpose bits
 * @param method 0 stored, 8 deflated
 * @param time date and time as the two halves of a DOS time
 * @param crc checksum of the unpacked bytes
 * @param packedSize bytes in the file
 * @param size bytes unpacked, as the file claims
 * @param header place of its record in the central directory
 * @param headerEnd place after that record
 * @param local place of its local header
 * @param data place of its bytes
 */
record ZipItem(
        String name,
        int flags,
        int method,
        int time,
        int crc,
        int packedSize,
        int size,
        int header,
        int headerEnd,
        int local,
        int data) {

    static final int STORED = 0;
    static final int DEFLATED = 8;

    private static final int ENCRYPTED = 1;
    private static final int SIZES_FOLLOW = 8;

    /** Returns the place after its bytes. */
    int dataEnd() {
        return data + packedSize;
    }

    /** Tells whether its bytes can be unpacked here. */
    boolean isReadable() {
        return (flags & ENCRYPTED) == 0 && (method == STORED || method == DEFLATED);
    }

    /** Tells whether a descriptor with checksum and sizes follows the bytes. */
    boolean hasDescriptor() {
        return (flags & SIZES_FOLLOW) != 0;
    }

    /** Tells whether some of its bytes are also bytes of another entry. */
    boolean overlaps(ZipItem other) {
        return local < other.dataEnd() && other.local < dataEnd();
    }
}
