package org.bellowscribe.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.musicxml.ScoreKind;
import org.jspecify.annotations.Nullable;

/**
 * The scores in a folder and below it, by name; hidden files and folders, and other ways to play a tune from an earlier
 * run, do not count.
 */
final class ScoreFolder {

    /** Bytes that hold the outermost tag of all but the strangest scores, behind a DOCTYPE and a comment. */
    private static final int BEGINNING = 16 << 10;

    private static final List<String> ENDINGS = List.of(".musicxml", ".xml", ".mxl");

    private final Path folder;
    /** The same, behind the link if it is one: a link that is named is meant, those below are passed over. */
    private final Path start;

    private final @Nullable Path results;
    private final List<Path> scores = new ArrayList<>();
    private final List<Path> otherWays = new ArrayList<>();
    private final List<Path> pins = new ArrayList<>();
    private final SortedMap<Path, IOException> unreadable = new TreeMap<>();

    private ScoreFolder(Path folder, @Nullable Path results) {
        this.folder = folder;
        this.start = Files.isSymbolicLink(folder) ? RealPaths.of(folder) : folder;
        this.results = results;
    }

    /**
     * Looks through a folder.
     *
     * @param results the folder for results, which is passed over if it lies below; or null
     */
    static ScoreFolder of(Path folder, @Nullable Path results) {
        ScoreFolder found = new ScoreFolder(folder, results);
        try {
            Files.walkFileTree(found.start, found.new Visitor());
        } catch (IOException e) {
            found.unreadable.put(folder, e);
        }
        Collections.sort(found.scores);
        Collections.sort(found.otherWays);
        Collections.sort(found.pins);
        return found;
    }

    /** Returns the scores, sorted. */
    List<Path> scores() {
        return scores;
    }

    /** Returns other ways to play one of the scores that an earlier run has written beside it, sorted. */
    List<Path> otherWays() {
        return otherWays;
    }

    /** Returns the files that are named like pins and are no scores, sorted. */
    List<Path> pins() {
        return pins;
    }

    /** Returns the files and folders that could not be looked at. */
    SortedMap<Path, IOException> unreadable() {
        return unreadable;
    }

    private final class Visitor extends SimpleFileVisitor<Path> {

        @Override
        public FileVisitResult preVisitDirectory(Path visited, BasicFileAttributes attributes) {
            boolean passOver =
                    !visited.equals(start) && (isHidden(visited) || isResults(visited) || isResults(named(visited)));
            return passOver ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path visited, BasicFileAttributes attributes) {
            Path file = named(visited);
            if (!Files.isRegularFile(file) || isHidden(file) || !hasScoreName(file)) {
                return FileVisitResult.CONTINUE;
            }
            if (isOtherXml(file)) {
                if (name(file).endsWith(Source.PINS)) {
                    pins.add(file);
                }
            } else {
                (OtherWays.isOne(file) ? otherWays : scores).add(file);
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) {
            unreadable.put(named(file), e);
            return FileVisitResult.CONTINUE;
        }
    }

    /** Returns a file as the user calls it. */
    private Path named(Path visited) {
        return start.equals(folder) ? visited : folder.resolve(start.relativize(visited));
    }

    private static boolean isHidden(Path path) {
        return path.getFileName().toString().startsWith(".");
    }

    private boolean isResults(Path path) {
        return results != null
                && path.toAbsolutePath()
                        .normalize()
                        .equals(results.toAbsolutePath().normalize());
    }

    private static boolean hasScoreName(Path file) {
        return ENDINGS.stream().anyMatch(name(file)::endsWith);
    }

    // A folder may hold XML files that are no scores, such as instruments; named by itself such a file is an error.
    private static boolean isOtherXml(Path file) {
        if (!name(file).endsWith(".xml")) {
            return false;
        }
        try {
            ScoreKind kind = kind(file);
            return kind != null && !kind.isScore();
        } catch (IOException e) {
            // It is said when its turn comes.
            return false;
        }
    }

    /** Returns the kind of a file by its beginning; null if that does not tell. */
    static @Nullable ScoreKind kind(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return ScoreKind.ofBeginning(in.readNBytes(BEGINNING));
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT);
    }
}
