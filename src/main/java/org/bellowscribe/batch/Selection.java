package org.bellowscribe.batch;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.CRC32;

/**
 * Which of the scores that are found are worked on.
 *
 * @param include patterns of which a score in a folder must match one; empty for all
 * @param exclude patterns of which neither it nor a folder on the way to it may match any
 * @param share which of several shares of all files is worked on
 */
public record Selection(List<PathPattern> include, List<PathPattern> exclude, Share share) {

    /** All scores. */
    public static final Selection ALL = new Selection(List.of(), List.of(), Share.ALL);

    /**
     * One of several shares of all files, so that several computers can work on one library. Which share a file belongs to
     * depends on nothing but where its result goes below the folder for results.
     *
     * @param number which, from 1
     * @param of how many there are
     */
    public record Share(int number, int of) {

        /** The whole. */
        public static final Share ALL = new Share(1, 1);

        /** Tells whether a file is in this share; its path has slashes on every computer. */
        public boolean holds(String path) {
            CRC32 hash = new CRC32();
            hash.update(path.getBytes(StandardCharsets.UTF_8));
            return hash.getValue() % of == number - 1;
        }
    }

    /** Copies the lists. */
    public Selection {
        include = List.copyOf(include);
        exclude = List.copyOf(exclude);
    }

    /**
     * Tells whether a score of a folder is among them, whatever its share.
     *
     * @param relative its path below that folder
     */
    boolean admits(Path relative) {
        return (include.isEmpty() || include.stream().anyMatch(pattern -> pattern.matches(relative)))
                && exclude.stream().noneMatch(pattern -> pattern.matchesOnTheWay(relative));
    }

    /** Returns a path with slashes on every computer. */
    public static String withSlashes(Path path) {
        return path.toString().replace(File.separatorChar, '/');
    }
}
