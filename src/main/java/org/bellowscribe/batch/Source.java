package org.bellowscribe.batch;

import java.nio.file.Path;

/**
 * A file to work on.
 *
 * @param file where it is
 * @param shown how to name it to the user
 * @param target where the result goes
 */
public record Source(Path file, String shown, Path target) {

    /** Returns the name of the file without folders. */
    public String name() {
        return String.valueOf(file.getFileName());
    }

    /** Returns the name of the file without folders and without its ending. */
    public String stem() {
        return stem(name());
    }

    /** Returns where the record goes: beside the result, as {@code NAME.record.json}. */
    public Path recordTarget() {
        return target.resolveSibling(stem(String.valueOf(target.getFileName())) + ".record.json");
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
