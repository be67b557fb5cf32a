package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.NearestNames;

/** What to say about a file that is not there: which one is near. */
final class Missing {

    private Missing() {}

    /** Returns advice about a path that nothing has. */
    static String advice(Path path) {
        Path folder = path.toAbsolutePath().normalize().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return "Maybe the folder above it is misspelled: there is none called %s.".formatted(folder);
        }
        try (Stream<Path> beside = Files.list(folder)) {
            List<String> names = beside.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .toList();
            List<String> near = NearestNames.of(String.valueOf(path.getFileName()), names);
            return near.isEmpty()
                    ? "Maybe it lies in another folder than %s.".formatted(folder)
                    : "Maybe %s is meant."
                            .formatted(String.join(
                                    " or ",
                                    near.stream()
                                            .map(name -> beside(path, name))
                                            .toList()));
        } catch (IOException | InvalidPathException e) {
            return "Maybe it lies in another folder than %s.".formatted(folder);
        }
    }

    private static String beside(Path path, String name) {
        return path.resolveSibling(name).toString();
    }

    /** Returns advice about a pattern that no score matches. */
    static String patternAdvice(String pattern) {
        return pattern.contains("**")
                ? "Hidden files, and XML files that are no scores, do not count."
                : "Within one folder * stands for a name; **/ stands for all folders below, as in 'book/**/*.musicxml'.";
    }
}
