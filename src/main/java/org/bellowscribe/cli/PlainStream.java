package org.bellowscribe.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.bellowscribe.diagnostic.PlainText;

/** Prints text without what could harm a terminal; the bytes of a score go through as they are. */
final class PlainStream extends PrintStream {

    PlainStream(OutputStream out) {
        super(out, true, StandardCharsets.UTF_8);
    }

    // All other ways to print text come here.
    @Override
    public void print(String text) {
        super.print(PlainText.lines(String.valueOf(text)));
    }

    @Override
    public void print(Object object) {
        print(String.valueOf(object));
    }

    /** Prints signs of our own that move the cursor. */
    void control(String signs) {
        super.print(signs);
        flush();
    }
}
