package org.bellowscribe.instrument.file;

import java.util.List;
import org.bellowscribe.instrument.Instrument;
import org.jspecify.annotations.Nullable;

/**
 * An instrument with what its file says about it.
 *
 * @param instrument the instrument
 * @param family words for the instruments that belong together in a list; empty for the instrument of a user
 * @param status how well its notes are known
 * @param sources where its notes were published, those of the instrument it is based on first; may be empty
 * @param remarks what a player should know, such as an open point, one sentence each; may be empty
 * @param manner id of the manner of playing that is usual on it; null for the one that is usual everywhere
 */
public record LibraryEntry(
        Instrument instrument,
        String family,
        SourceStatus status,
        List<String> sources,
        List<String> remarks,
        @Nullable String manner) {

    /** Copies the lists. */
    public LibraryEntry {
        sources = List.copyOf(sources);
        remarks = List.copyOf(remarks);
    }
}
