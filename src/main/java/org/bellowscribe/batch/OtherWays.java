package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.solver.explain.Alternatives;

/** Other ways to play a tune that stand beside it since an earlier run. */
final class OtherWays {

    /** The number of the last one that a run can write; the first is 2. */
    static final int LAST = Alternatives.MOST + 1;

    private static final Pattern NAME = Pattern.compile("(.+)\\.([2-9]|[1-9]\\d)(\\.[^.]+)");

    private OtherWays() {}

    /** Tells whether a file is one: called like a file beside it but for the number, and with our marks. */
    static boolean isOne(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        return name.matches()
                && Integer.parseInt(name.group(2)) <= LAST
                && Files.isRegularFile(file.resolveSibling(name.group(1) + name.group(3)))
                && hasOurMarks(file);
    }

    private static boolean hasOurMarks(Path file) {
        try {
            return !ScoreDocument.decode(Source.bytes(file)).marks().isEmpty();
        } catch (IOException | DiagnosedException e) {
            // What is wrong with it is said when it is worked on.
            return false;
        }
    }
}
