package org.bellowscribe.report;

import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.TuneFit;

/** Writes which instruments and keys suit tunes. Texts come in the order in which they are to stand. */
public interface FitWriter {

    /** Returns what stands above all tunes; may be empty. */
    String begin();

    /** Returns the text of a tune. */
    String tune(TuneFit fit);

    /** Returns what stands below all tunes: the table of the book. */
    String end(BookFit book);
}
