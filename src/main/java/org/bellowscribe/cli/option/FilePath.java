package org.bellowscribe.cli.option;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Reads the path of a file or folder. */
public record FilePath() implements ValueReader<Path> {

    @Override
    public Path read(String option, String text) throws UsageException {
        if (text.equals("-")) {
            throw new UsageException(
                    "--%s takes a path, and - is standard output.%n  Maybe leave --%s out, or write ./-."
                            .formatted(option, option));
        }
        return of(text);
    }

    /** Returns the path of a name. */
    public static Path of(String name) throws UsageException {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new UsageException("No file or folder can have the name %s.".formatted(name));
        }
    }
}
