package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What files are really called whatever links lead to them, and what stands in folders: each folder is asked once. */
final class RealPaths {

    private final Map<Path, Path> folders = new HashMap<>();
    private final Map<Path, Set<String>> names = new HashMap<>();

    /** Returns what a path is called whatever links lead to it. */
    static Path of(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            return path.toAbsolutePath().normalize();
        }
    }

    /** Returns the same for a file that was found in its folder, so that its name is spelled as it is there. */
    Path ofFound(Path file) {
        Path folder = file.getParent();
        Path name = file.getFileName();
        return folder == null || Files.isSymbolicLink(file)
                ? of(file)
                : folderOf(folder).resolve(name);
    }

    /** Returns what the folder of a file is really called. */
    Path folderOf(Path folder) {
        return folders.computeIfAbsent(folder, RealPaths::of);
    }

    /** Tells whether something of the name of a path stands in its folder. */
    boolean stands(Path path) {
        Path folder = path.getParent();
        return names.computeIfAbsent(folder == null ? Path.of("") : folder, RealPaths::names)
                .contains(String.valueOf(path.getFileName()));
    }

    private static Set<String> names(@Nullable Path folder) {
        Set<String> names = new HashSet<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            files.forEach(file -> names.add(String.valueOf(file.getFileName())));
        } catch (IOException e) {
            // There is no such folder yet.
        }
        return names;
    }
}
