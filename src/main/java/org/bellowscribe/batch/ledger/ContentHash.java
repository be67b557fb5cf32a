package org.bellowscribe.batch.ledger;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import java.util.zip.Checksum;

/**
 * Tells contents apart: their length and two independent sums of 32 bits. Nobody is kept from forging one; that a content
 * changes by chance and keeps it is ruled out but for one time in 18 quintillions. A cryptographic hash takes a hundred
 * times as long where Java does not compile it for the processor.
 */
public final class ContentHash {

    /** That of something that is not there. */
    public static final String NONE = "-";

    private final Checksum first = new CRC32();
    private final Checksum second = new CRC32C();
    private long length;

    /** Returns the hash of a content. */
    public static String of(byte[] bytes) {
        return new ContentHash().add(bytes, bytes.length).text();
    }

    /** Returns the hash of a text. */
    public static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Adds what comes next. */
    public ContentHash add(byte[] bytes, int count) {
        first.update(bytes, 0, count);
        second.update(bytes, 0, count);
        length += count;
        return this;
    }

    /** Returns the hash of all that was added: without spaces, the length first. */
    public String text() {
        return "%x-%08x%08x".formatted(length, first.getValue(), second.getValue());
    }
}
