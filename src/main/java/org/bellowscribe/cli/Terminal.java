package org.bellowscribe.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.InvocationTargetException;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.Severity;

/**
 * Where the tool speaks.
 *
 * @param in what may be piped in
 * @param out results
 * @param err remarks and progress
 * @param isInteractive true if a person watches, so that progress makes sense
 * @param hasColors true if errors and warnings may stand out by their color
 */
record Terminal(InputStream in, PlainStream out, PlainStream err, boolean isInteractive, boolean hasColors) {

    private static final String CLEAR_LINE = "\r\u001B[K";
    private static final String RED = "\u001B[31m";
    private static final String YELLOW = "\u001B[33m";
    private static final String USUAL = "\u001B[0m";

    /** Creates one that nobody watches. */
    Terminal(InputStream in, PlainStream out, PlainStream err) {
        this(in, out, err, false, false);
    }

    /**
     * Returns that of the process.
     *
     * @param environment the variables of the process; a {@code NO_COLOR} that is not empty wants none (no-color.org)
     */
    static Terminal ofProcess(Map<String, String> environment) {
        boolean watched = isWatched() && !"dumb".equals(environment.get("TERM"));
        boolean colors = watched && environment.getOrDefault("NO_COLOR", "").isEmpty();
        return new Terminal(
                StandardInput.open(), new PlainStream(System.out), new PlainStream(System.err), watched, colors);
    }

    // From JDK 22 on there is a console also where nobody watches, but it can be asked.
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isWatched() {
        Object console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) console.getClass().getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }

    /** Returns the same, but with the results among the remarks: for a run that sends a score to standard output. */
    Terminal withoutOut() {
        return new Terminal(in, err, err, isInteractive, hasColors);
    }

    /** Returns the same, but without results and progress. */
    Terminal quiet() {
        return new Terminal(in, new PlainStream(OutputStream.nullOutputStream()), err, false, hasColors);
    }

    /** Prints a remark about a file. */
    void remark(String file, Diagnostic remark) {
        String text = remark.print(file);
        String label = remark.severity().label();
        int place = text.indexOf(": " + label + " [") + 2;
        if (!hasColors || remark.severity() == Severity.NOTE || place < 2) {
            err.println(text);
            return;
        }
        err.print(text.substring(0, place));
        err.control(remark.severity() == Severity.ERROR ? RED : YELLOW);
        err.print(label);
        err.control(USUAL);
        err.println(text.substring(place + label.length()));
    }

    /** Shows a line that the next output replaces. */
    void showLine(String line) {
        err.control(CLEAR_LINE + line);
    }

    /** Takes that line away. */
    void clearLine() {
        err.control(CLEAR_LINE);
    }
}
