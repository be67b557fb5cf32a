package org.bellowscribe.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * The tool run in this process.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it remarked
 */
record CommandRun(int code, String out, String err) {

    /** Runs the tool with the words of a command line. */
    static CommandRun of(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                words,
                new Terminal(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false));
        return new CommandRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
