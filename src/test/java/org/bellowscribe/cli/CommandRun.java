package org.bellowscribe.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * The tool run in this process.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it remarked
 */
record CommandRun(int code, String out, String err) {

    /**
     * Runs the tool with a file piped in; what it printed has one character a byte.
     *
     * @param in the bytes of the file
     */
    static CommandRun piped(byte[] in, String... words) {
        return run(in, StandardCharsets.ISO_8859_1, words);
    }

    /** Runs the tool with the words of a command line. */
    static CommandRun of(String... words) {
        return run(new byte[0], StandardCharsets.UTF_8, words);
    }

    private static CommandRun run(byte[] in, Charset charset, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code =
                Main.run(words, new Terminal(new ByteArrayInputStream(in), new PlainStream(out), new PlainStream(err)));
        return new CommandRun(code, out.toString(charset), err.toString(StandardCharsets.UTF_8));
    }
}
