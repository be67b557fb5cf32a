package org.bellowscribe.annotation;

import java.util.List;

/**
 * A sort of mark, found through {@link java.util.ServiceLoader}. Stateless: the same arrangement always gives the same
 * marks.
 */
public interface Annotator {

    /** Returns the id by which a user asks for these marks: kebab-case, unlike that of every other annotator. */
    String id();

    /** Returns one sentence about what is marked, ending in a full stop. */
    String summary();

    /** Returns true if the marks are written unless the user asks for others. */
    boolean byDefault();

    /**
     * Returns what to write.
     *
     * @return the marks; lyric lines stand below each other in the order in which they are first named here
     */
    List<Mark> marks(Arrangement arrangement);

    /** Returns the signs that occur among the marks of an arrangement, with what they mean; may be empty. */
    List<LegendEntry> legend(Arrangement arrangement);
}
