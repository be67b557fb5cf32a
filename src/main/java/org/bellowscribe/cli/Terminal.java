package org.bellowscribe.cli;

import java.io.InputStream;

/**
 * Where the tool speaks.
 *
 * @param in what may be piped in
 * @param out results
 * @param err remarks and progress
 * @param isInteractive true if a person watches, so that progress makes sense
 */
record Terminal(InputStream in, PlainStream out, PlainStream err, boolean isInteractive) {

    private static final String CLEAR_LINE = "\r\u001B[K";

    /** Returns the same, but with the results among the remarks: for a run that sends a score to standard output. */
    Terminal withoutOut() {
        return new Terminal(in, err, err, isInteractive);
    }

    /** Shows how far the work is, on a line that the next output replaces. */
    void progress(int done, int all) {
        if (isInteractive) {
            err.control(CLEAR_LINE + done + "/" + all);
        }
    }

    /** Takes the progress line away. */
    void endProgress() {
        if (isInteractive) {
            err.control(CLEAR_LINE);
        }
    }
}
