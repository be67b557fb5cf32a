package org.bellowscribe.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.ScoreDocument;
import org.jspecify.annotations.Nullable;

/**
 * A file to work on, or standard input.
 *
 * @param file where it is; for standard input its name only
 * @param shown how to name it to the user
 * @param target where the result goes; for standard output its name only
 * @param pipe the streams that stand for file and target; null for files
 * @param olderWays where other ways to play the tune stand since an earlier run, the first of them first
 * @param wholeName true if what is written beside the result keeps the ending in its name, as in
 *     {@code NAME.mxl.record.json}, because another result of the run has the same name but for the ending
 * @param files where what is written for it goes
 */
public record Source(
        Path file,
        String shown,
        Path target,
        @Nullable Pipe pipe,
        List<Path> olderWays,
        boolean wholeName,
        ResultWriter files) {

    /** How the name of a record ends. */
    public static final String RECORD = ".record.json";

    /** How the name of a file of pins ends. */
    static final String PINS = ".pins.xml";

    /** Streams in place of files. */
    private record Pipe(InputStream in, PrintStream out) {}

    /** Copies the list. */
    public Source {
        olderWays = List.copyOf(olderWays);
    }

    /** Creates the source of a file beside whose result there is nothing yet. */
    public Source(Path file, String shown, Path target) {
        this(file, shown, target, null, List.of(), false, ResultWriter.TO_DISK);
    }

    /** Returns this source with what stands beside its result. */
    Source with(List<Path> ways) {
        return new Source(file, shown, target, pipe, ways, wholeName, files);
    }

    /** Returns this source, what is written beside its result under its whole name. */
    Source byWholeName() {
        return new Source(file, shown, target, pipe, olderWays, true, files);
    }

    /** Returns this source, what is written for it going elsewhere. */
    Source with(ResultWriter writer) {
        return new Source(file, shown, target, pipe, olderWays, wholeName, writer);
    }

    /**
     * Returns the source that is read from one stream and whose result goes to another. Nothing is written if there is no
     * result.
     */
    public static Source piped(InputStream in, PrintStream out) {
        return new Source(
                Path.of("standard input"),
                "standard input",
                Path.of("standard output"),
                new Pipe(in, out),
                List.of(),
                false,
                ResultWriter.TO_DISK);
    }

    /**
     * Returns the bytes of the score.
     *
     * @throws DiagnosedException if they cannot be read or are more than a score may have
     */
    byte[] read() throws DiagnosedException {
        try {
            return pipe == null ? bytes(file) : readPipe(pipe.in());
        } catch (IOException e) {
            if (pipe != null) {
                throw new DiagnosedException(Diagnostic.error(
                        DiagnosticCode.UNREADABLE,
                        Place.FILE,
                        "Standard input cannot be read (%s).".formatted(Obstacle.of(e)),
                        "Maybe name a file instead of -."));
            }
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The file cannot be read (%s).".formatted(Obstacle.of(e)),
                    "Maybe see to its permissions."));
        }
    }

    /** Returns the bytes of a file that is no larger than a score may be. */
    static byte[] bytes(Path file) throws DiagnosedException, IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new DiagnosedException(noFile());
        }
        if (Files.size(file) > ScoreDocument.MAX_BYTES) {
            throw tooLarge(String.valueOf(Files.size(file)));
        }
        return Files.readAllBytes(file);
    }

    /** Returns what to say about a device or a pipe, which may never end. */
    static Diagnostic noFile() {
        return Diagnostic.error(
                DiagnosticCode.UNREADABLE,
                Place.FILE,
                "It is no file but a device or a pipe.",
                "Maybe - is meant, which reads a score from standard input.");
    }

    private static byte[] readPipe(InputStream in) throws DiagnosedException, IOException {
        byte[] bytes = in.readNBytes(ScoreDocument.MAX_BYTES + 1);
        if (bytes.length > ScoreDocument.MAX_BYTES) {
            throw tooLarge("more than " + ScoreDocument.MAX_BYTES);
        }
        return bytes;
    }

    private static DiagnosedException tooLarge(String bytes) {
        return new DiagnosedException(Diagnostic.error(
                DiagnosticCode.UNREADABLE,
                Place.FILE,
                "The file has %s bytes, and a score may have %d.".formatted(bytes, ScoreDocument.MAX_BYTES)));
    }

    /**
     * Writes the result, whole or not at all.
     *
     * @throws DiagnosedException if it cannot be written
     */
    void write(byte[] bytes) throws DiagnosedException {
        if (pipe == null) {
            files.write(target, bytes);
            return;
        }
        pipe.out().write(bytes, 0, bytes.length);
        if (pipe.out().checkError()) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNWRITABLE,
                    Place.FILE,
                    "Standard output cannot be written.",
                    "Maybe the program that reads it has ended."));
        }
    }

    /** Tells whether the score comes from standard input and goes to standard output. */
    public boolean isPiped() {
        return pipe != null;
    }

    /** Tells whether something stands already where the result goes, other than the file itself. */
    boolean hasOlderResult() {
        return pipe == null && !target.equals(file) && Files.exists(target);
    }

    /** Returns the name of the file without folders. */
    public String name() {
        return String.valueOf(file.getFileName());
    }

    /** Returns the name of the file without folders and without its ending. */
    public String stem() {
        return stem(name());
    }

    /** Returns where the record goes: beside the result, as {@code NAME.record.json}, where no other has that name. */
    public Path recordTarget() {
        return beside(RECORD);
    }

    /**
     * Returns a place beside the result.
     *
     * @param ending what stands behind the name of the result without its ending
     */
    Path beside(String ending) {
        String name = String.valueOf(target.getFileName());
        return target.resolveSibling((wholeName ? name : stem(name)) + ending);
    }

    /**
     * Returns where another way to play the tune goes: beside the result, as {@code NAME.2.musicxml}.
     *
     * @param number 2 for the first of them
     */
    Path alternativeTarget(int number) {
        String name = String.valueOf(target.getFileName());
        String stem = stem(name);
        return target.resolveSibling(stem + "." + number + name.substring(stem.length()));
    }

    /**
     * Returns all places where a run may write something for it.
     *
     * @param beside what may be written beside the result
     */
    List<Path> targets(Wanted.Beside beside) {
        List<Path> targets = new ArrayList<>(List.of(target));
        beside.endings().forEach(ending -> targets.add(beside(ending)));
        for (int way = 1; way <= beside.alternatives(); way++) {
            targets.add(alternativeTarget(way + 1));
        }
        return targets;
    }

    /** Returns where its pins are, if there are any: beside the score, as {@code NAME.pins.xml}; null for a stream. */
    public @Nullable Path pinsFile() {
        return pipe == null ? file.resolveSibling(stem() + PINS) : null;
    }

    /** Returns a name without its ending. */
    public static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
