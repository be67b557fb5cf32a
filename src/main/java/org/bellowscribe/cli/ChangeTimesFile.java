package org.bellowscribe.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.definition.DefinitionFile;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.exercise.ChangeTimes;

/** Reads the file with a pupil's own times for changes of the hand. */
record ChangeTimesFile() implements ValueReader<ChangeTimes> {

    @Override
    public ChangeTimes read(String option, String text) throws UsageException {
        Path file = new FilePath().read(option, text);
        return LibraryName.find(name -> read(file), option, text);
    }

    private static ChangeTimes read(Path file) throws DiagnosedException {
        try (InputStream stream = DefinitionFile.open(file)) {
            return ChangeTimes.read(stream);
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The file with times of changes cannot be read (%s).".formatted(Obstacle.of(e)),
                    "Maybe the path is misspelled."));
        }
    }

    @Override
    public List<Path> files(String text) {
        return List.of(Path.of(text));
    }

    @Override
    public String fromFolder(Path folder, String text) {
        return folder.resolve(text).toString();
    }
}
