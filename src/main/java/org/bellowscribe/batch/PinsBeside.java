package org.bellowscribe.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bellowscribe.definition.DefinitionFile;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.marking.NamedPins;
import org.bellowscribe.solver.pin.PinFile;
import org.jspecify.annotations.Nullable;

/** The file of pins of a score. */
final class PinsBeside {

    private PinsBeside() {}

    /**
     * Reads the pins of a score.
     *
     * @param given where they are; null for beside the score, where there need be none
     * @return null if there are none
     * @throws DiagnosedException if their file is wrong or cannot be read
     */
    static @Nullable NamedPins read(@Nullable Path given, Source source) throws DiagnosedException {
        Path path = given == null ? source.pinsFile() : given;
        if (path == null || (given == null && !Files.exists(path))) {
            return null;
        }
        String name = String.valueOf(path.getFileName());
        try (InputStream stream = DefinitionFile.open(path)) {
            return new NamedPins(name, PinFile.read(stream));
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The pins in %s cannot be read (%s).".formatted(name, Obstacle.of(e))));
        } catch (DiagnosedException e) {
            throw NamedPins.named(name, e);
        }
    }
}
