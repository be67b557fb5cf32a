package org.bellowscribe.compare;

import java.util.Locale;
import org.bellowscribe.decision.DecidedTune;

/**
 * A tune that is played in two ways.
 *
 * @param file what its file is called
 * @param a one way
 * @param b the other; of the same tune in the same key
 */
public record ComparedTune(String file, Side a, Side b) {

    /**
     * One way to play it.
     *
     * @param name what people call the way
     * @param tune the tune played so
     * @param score where the marked score is, as a page beside it links to it
     * @param engraved the same as a compressed file whose notes have ids, see {@link #before}
     */
    public record Side(String name, DecidedTune tune, String score, byte[] engraved) {}

    /**
     * Returns what the ids of the notes of a score begin with, so that all scores may stand on one page.
     *
     * @param file what the file is called
     * @param letter A or B
     */
    public static String before(String file, String letter) {
        return "%s%08x-".formatted(letter.toLowerCase(Locale.ROOT), file.hashCode());
    }

    /** Returns the title of the tune. */
    public String title() {
        return a.tune().tune().title();
    }
}
