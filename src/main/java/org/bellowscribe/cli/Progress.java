package org.bellowscribe.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.LongSupplier;
import org.bellowscribe.batch.Source;
import org.bellowscribe.diagnostic.PlainText;

/** One line for a person who waits: how many are done, how fast, how long it will take, and which is next. */
final class Progress {

    /** The rate is that of the last of them, because those that are unchanged take no time. */
    private static final int RECENT = 20;

    private static final int WIDTH = 79;
    private static final double SECOND = 1e9;
    private static final int MINUTE = 60;
    private static final int HOUR = 3600;

    private final Terminal terminal;
    private final List<Source> files;
    private final LongSupplier clock;
    private final Deque<Long> times = new ArrayDeque<>();
    private int done;

    /**
     * Creates the line.
     *
     * @param files all files in their order
     * @param clock tells nanoseconds
     */
    Progress(Terminal terminal, List<Source> files, LongSupplier clock) {
        this.terminal = terminal;
        this.files = files;
        this.clock = clock;
        times.add(clock.getAsLong());
    }

    /** Counts one more. */
    void count() {
        done++;
        times.add(clock.getAsLong());
        if (times.size() > RECENT + 1) {
            times.remove();
        }
    }

    /** Shows the line where somebody watches. */
    void show() {
        if (terminal.isInteractive() && done < files.size()) {
            terminal.showLine(line());
        }
    }

    /** Takes it away before anything else is printed. */
    void hide() {
        if (terminal.isInteractive()) {
            terminal.clearLine();
        }
    }

    /** Returns what it says. */
    String line() {
        StringBuilder line = new StringBuilder(done + "/" + files.size());
        double seconds = (times.getLast() - times.getFirst()) / SECOND;
        int counted = times.size() - 1;
        if (counted > 0 && seconds > 0) {
            double rate = counted / seconds;
            line.append(rate < 1 ? ", %.0f a minute".formatted(rate * MINUTE) : ", %.0f a second".formatted(rate));
            line.append(", ").append(left((files.size() - done) / rate)).append(" left");
        }
        if (done < files.size()) {
            line.append(", ").append(PlainText.line(files.get(done).name()));
        }
        return line.length() <= WIDTH ? line.toString() : line.substring(0, WIDTH - 1) + "…";
    }

    private static String left(double seconds) {
        if (seconds < MINUTE) {
            return (int) Math.ceil(seconds) + " s";
        }
        return seconds < HOUR ? (int) Math.ceil(seconds / MINUTE) + " min" : "%.1f h".formatted(seconds / HOUR);
    }
}
