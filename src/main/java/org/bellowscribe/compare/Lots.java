package org.bellowscribe.compare;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Draws lots: without pattern, and for a seed and a name always the same, whatever else is drawn.
 *
 * @param seed any number
 */
public record Lots(long seed) {

    /** Returns which of two ways is A: true if the second is. */
    public boolean swaps(String file) {
        return draw("letters", file) < 0;
    }

    /** Returns where a file stands among others: the smaller, the earlier. */
    public long place(String file) {
        return draw("order", file);
    }

    private long draw(String what, String file) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] bytes = "%d %s %s".formatted(seed, what, file).getBytes(StandardCharsets.UTF_8);
            return ByteBuffer.wrap(digest.digest(bytes)).getLong();
        } catch (NoSuchAlgorithmException e) {
            // Every Java has it.
            throw new IllegalStateException(e);
        }
    }
}
