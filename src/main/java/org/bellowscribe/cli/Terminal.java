package org.bellowscribe.cli;

import java.io.PrintStream;

/**
 * Where the tool speaks.
 *
 * @param out results
 * @param err remarks and progress
 * @param isInteractive true if a person watches, so that progress makes sense
 */
record Terminal(PrintStream out, PrintStream err, boolean isInteractive) {

    private static final String CLEAR_LINE = "\r\u001B[K";

    /** Shows how far the work is, on a line that the next output replaces. */
    void progress(int done, int all) {
        if (isInteractive) {
            err.print(CLEAR_LINE + done + "/" + all);
            err.flush();
        }
    }

    /** Takes the progress line away. */
    void endProgress() {
        if (isInteractive) {
            err.print(CLEAR_LINE);
            err.flush();
        }
    }
}
