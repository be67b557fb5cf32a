package org.bellowscribe.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LotsTest {

    @Test
    void sameSeedDrawsTheSame() {
        assertEquals(new Lots(5).place("a.musicxml"), new Lots(5).place("a.musicxml"));
        assertNotEquals(new Lots(5).place("a.musicxml"), new Lots(6).place("a.musicxml"));
    }

    /** Of 1000 fair draws between 437 and 563 fall either way, but for one case in ten thousand. */
    @Test
    void waysAreSwappedAboutHalfTheTime() {
        long bySeed = IntStream.range(0, 1000)
                .filter(seed -> new Lots(seed).swaps("a"))
                .count();
        long byFile = IntStream.range(0, 1000)
                .filter(file -> new Lots(1).swaps("tune " + file))
                .count();
        assertTrue(bySeed > 437 && bySeed < 563, "by seed " + bySeed);
        assertTrue(byFile > 437 && byFile < 563, "by file " + byFile);
    }
}
