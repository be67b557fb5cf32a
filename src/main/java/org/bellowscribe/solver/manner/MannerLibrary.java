package org.bellowscribe.solver.manner;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.solver.Manner;

/** The manners of playing that come with the tool, and the way to those of a user. */
public final class MannerLibrary {

    /** Id of the manner that is meant when nobody names one. */
    public static final String DEFAULT_ID = "along-the-row";

    private static final String FOLDER = "/org/bellowscribe/shared/manners/";

    /** Manners of the library in the order of {@link #all()}; a manner may be based on one before it. */
    private static final List<String> IDS = List.of(DEFAULT_ID, "across-the-rows", "chords-first", "learner");

    private MannerLibrary() {}

    /** Returns the ids of the library, the default manner first. */
    public static List<String> ids() {
        return IDS;
    }

    /** Returns the whole library, the default manner first. */
    public static List<Manner> all() {
        return IDS.stream().map(MannerLibrary::of).toList();
    }

    /**
     * Returns a manner of the library.
     *
     * @throws IllegalArgumentException if the library has none of that id
     */
    public static Manner of(String id) {
        try (InputStream stream = MannerLibrary.class.getResourceAsStream(FOLDER + id + ".xml")) {
            if (stream == null || !IDS.contains(id)) {
                throw new IllegalArgumentException("The manner (%s) must be one of %s.".formatted(id, IDS));
            }
            return read(stream);
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(id + ".xml"), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Returns a manner.
     *
     * @param idOrFile an id of the library, such as {@code learner}, or the path of a manner file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public static Manner find(String idOrFile) throws DiagnosedException {
        if (IDS.contains(idOrFile)) {
            return of(idOrFile);
        }
        try {
            Path file = Path.of(idOrFile);
            if (file.getNameCount() > 1 || idOrFile.endsWith(".xml") || Files.exists(file)) {
                return read(file);
            }
        } catch (InvalidPathException e) {
            // Then it can only be an id.
        }
        throw new DiagnosedException(unknown(idOrFile, Place.FILE));
    }

    /**
     * Reads a manner file.
     *
     * @throws DiagnosedException if it is against the schema, or names a rule or a case that does not exist
     * @throws IOException if the stream cannot be read
     */
    public static Manner read(InputStream stream) throws DiagnosedException, IOException {
        return MannerReader.read(stream);
    }

    private static Manner read(Path file) throws DiagnosedException {
        try (InputStream stream = Files.newInputStream(file)) {
            return read(stream);
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The manner file cannot be read (%s).".formatted(Obstacle.of(e)),
                    "Maybe the path is misspelled, or the id of a manner is meant: %s."
                            .formatted(String.join(", ", IDS))));
        }
    }

    /** Returns what to say about an id that the library does not have. */
    static Diagnostic unknown(String id, Place place) {
        List<String> near = NearestNames.of(id, IDS);
        String text = "The library has no manner %s.".formatted(id);
        String all = "The library has: %s.".formatted(String.join(", ", IDS));
        return near.isEmpty()
                ? Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, place, text, all)
                : Diagnostic.error(
                        DiagnosticCode.UNKNOWN_NAME,
                        place,
                        text,
                        "Maybe %s.".formatted(String.join(" or ", near)),
                        all);
    }
}
