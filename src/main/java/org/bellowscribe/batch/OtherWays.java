package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
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
                && hasSibling(file, name.group(1) + name.group(3))
                && hasOurMarks(file);
    }

    private static boolean hasSibling(Path file, String name) {
        try {
            return Files.isRegularFile(file.resolveSibling(name));
        } catch (InvalidPathException e) {
            // A name that is no text here is told elsewhere.
            return false;
        }
    }

    /**
     * Finds those that stand beside where a result goes.
     *
     * @param own tells of a place whether nothing but another way to play this tune can be there
     */
    static List<Path> besideResultOf(Source source, Predicate<Path> own) {
        return IntStream.rangeClosed(2, LAST)
                .mapToObj(source::alternativeTarget)
                .filter(way -> own.test(way) && Files.isRegularFile(way) && hasOurMarks(way) && !isOfATune(way, source))
                .toList();
    }

    // The result of a tune of its own that stands beside this one, from a run of both.
    private static boolean isOfATune(Path way, Source source) {
        Path tune = source.file().resolveSibling(String.valueOf(way.getFileName()));
        return Files.isRegularFile(tune) && !isOne(tune);
    }

    /**
     * Says which of them a run has left as they were.
     *
     * @param count how many ways it has written beside the first
     */
    static List<Diagnostic> remarks(Source source, int count) {
        List<Path> written = IntStream.range(2, 2 + count)
                .mapToObj(source::alternativeTarget)
                .toList();
        List<String> left = source.olderWays().stream()
                .filter(way -> !written.contains(way))
                .map(Path::toString)
                .toList();
        if (left.isEmpty()) {
            return List.of();
        }
        return List.of(Diagnostic.warning(
                DiagnosticCode.OLDER_RESULT,
                Place.FILE,
                left.size() == 1
                        ? "This run did not write %s: it is of an earlier one.".formatted(left.get(0))
                        : "This run did not write %s: they are of an earlier one.".formatted(String.join(", ", left)),
                "Maybe delete %s, so that nobody plays from %s."
                        .formatted(left.size() == 1 ? "it" : "them", left.size() == 1 ? "it" : "them")));
    }

    /**
     * Checks that no file without our marks stands where other ways to play are to be written: a user's own.
     *
     * @param count how many ways are to be written
     * @throws DiagnosedException if one does
     */
    static void requireOurs(Source source, int count) throws DiagnosedException {
        for (int way = 2; way < 2 + count; way++) {
            Path target = source.alternativeTarget(way);
            if (Files.exists(target) && !hasOurMarks(target)) {
                throw new DiagnosedException(Diagnostic.error(
                        DiagnosticCode.UNWRITABLE,
                        Place.FILE,
                        "Another way to play would take the place of %s, which has no marks of ours.".formatted(target),
                        "Maybe give that file another name, or name another folder with --out."));
            }
        }
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
