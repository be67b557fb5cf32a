package org.bellowscribe.api;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.marking.Decision;
import org.bellowscribe.marking.ReadTune;
import org.jspecify.annotations.Nullable;

/**
 * Marks scores: a plain function from the bytes of a score to its marked score, as a data-parallel engine wants it. It may be
 * sent to other computers (all it holds are names), and each copy makes there what all scores share, once.
 */
public final class Bellowscribe implements Function<byte[], MarkedScore>, Serializable {

    private static final long serialVersionUID = 1L;
    private static final String NO_NAME = "score";

    private final String instrument;
    private final String manner;
    private final String style;
    private final ArrayList<String> marks;
    private transient volatile @Nullable Workshop workshop;

    private Bellowscribe(String instrument, String manner, String style, List<String> marks) {
        this.instrument = instrument;
        this.manner = manner;
        this.style = style;
        this.marks = new ArrayList<>(marks);
        this.workshop = Workshop.of(instrument, manner, style, marks);
    }

    /**
     * Marks for an instrument, in the manner that is usual on it, with the usual style and marks.
     *
     * @param idOrFile an id that {@code instruments list} shows, such as {@code dg-21}, or the path of an instrument file
     * @throws IllegalArgumentException if it is not known or wrong
     */
    public static Bellowscribe on(String idOrFile) {
        return new Bellowscribe(idOrFile, "", StyleLibrary.DEFAULT_ID, List.of());
    }

    /**
     * Returns the same in another manner of playing.
     *
     * @param idOrFile an id that {@code manners list} shows, or the path of a manner file
     * @throws IllegalArgumentException if it is not known or wrong
     */
    public Bellowscribe inManner(String idOrFile) {
        return new Bellowscribe(instrument, idOrFile, style, marks);
    }

    /**
     * Returns the same with other labels and signs.
     *
     * @param idOrFile an id that {@code styles list} shows, or the path of a style file
     * @throws IllegalArgumentException if it is not known or wrong
     */
    public Bellowscribe inStyle(String idOrFile) {
        return new Bellowscribe(instrument, manner, idOrFile, marks);
    }

    /**
     * Returns the same with other marks on the sheet. They change nothing of what is played.
     *
     * @param ids ids that {@code mark --help} shows, such as {@code buttons}; none for the usual ones
     * @throws IllegalArgumentException if one is not known
     */
    public Bellowscribe printing(String... ids) {
        return new Bellowscribe(instrument, manner, style, List.of(ids));
    }

    /**
     * Reads a score and decides how to play it.
     *
     * @param score the file of the score, compressed or not
     * @param name what to call it where it has no title, and in its record
     */
    public DecidedScore decide(byte[] score, String name) {
        Workshop here = workshop();
        try {
            ReadTune read = here.reader().read(score, name, null);
            return new DecidedScore(here, name, here.decider().decide(read));
        } catch (DiagnosedException e) {
            return new DecidedScore(here, name, new Decision.Refused(e.diagnostics()));
        }
    }

    /**
     * Reads a score, decides it and prints its marks.
     *
     * @param score the file of the score, compressed or not
     * @param name what to call it where it has no title, and in its record
     */
    public MarkedScore mark(byte[] score, String name) {
        return decide(score, name).marked();
    }

    /** Marks a score that has no name. */
    @Override
    public MarkedScore apply(byte[] score) {
        return mark(score, NO_NAME);
    }

    // Not sent along. Two threads may make one each at the start; both are alike.
    private Workshop workshop() {
        Workshop here = workshop;
        if (here == null) {
            here = Workshop.of(instrument, manner, style, marks);
            workshop = here;
        }
        return here;
    }
}
