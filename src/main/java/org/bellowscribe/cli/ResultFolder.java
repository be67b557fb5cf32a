package org.bellowscribe.cli;

import java.nio.file.Path;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;

/** Reads the folder for results. */
record ResultFolder() implements ValueReader<Path> {

    @Override
    public Path read(String option, String text) throws UsageException {
        if (text.equals(FileOptions.PIPE)) {
            throw new UsageException(
                    ("--%s takes a folder. To standard output goes only the result of the score from standard input.%n"
                                    + "  Maybe write - in place of the file, and < behind it: - < tune.musicxml.")
                            .formatted(option));
        }
        return FilePath.of(text);
    }
}
