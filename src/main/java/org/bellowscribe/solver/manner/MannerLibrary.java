package org.bellowscribe.solver.manner;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.bellowscribe.definition.Library;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.solver.Manner;

/** The manners of playing that come with the tool, and the way to those of a user. */
public final class MannerLibrary {

    /** Id of the manner that is meant when nobody names one. */
    public static final String DEFAULT_ID = "along-the-row";

    private static final String FOLDER = "/org/bellowscribe/shared/manners/";

    /** Manners of the library in the order of {@link #all()}; a manner may be based on one before it. */
    private static final List<String> IDS =
            List.of(DEFAULT_ID, "across-the-rows", "chords-first", "learner", "air-study");

    private static final Library<Manner> LIBRARY =
            new Library<>("manner", IDS, MannerLibrary::known, MannerReader::read);

    private MannerLibrary() {}

    /** Returns the library, the default manner first. */
    public static Library<Manner> library() {
        return LIBRARY;
    }

    /** Returns the ids of the library, the default manner first. */
    public static List<String> ids() {
        return IDS;
    }

    /** Returns the whole library, the default manner first. */
    public static List<Manner> all() {
        return LIBRARY.all();
    }

    /**
     * Returns a manner of the library.
     *
     * @throws IllegalArgumentException if the library has none of that id
     */
    public static Manner of(String id) {
        return LIBRARY.of(id);
    }

    /**
     * Returns a manner.
     *
     * @param idOrFile an id of the library, such as {@code learner}, or the path of a manner file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public static Manner find(String idOrFile) throws DiagnosedException {
        return LIBRARY.find(idOrFile);
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

    private static Manner known(String id) {
        try (InputStream stream = MannerLibrary.class.getResourceAsStream(FOLDER + id + ".xml")) {
            if (stream == null) {
                throw new IllegalStateException("The file (%s.xml) must be in %s.".formatted(id, FOLDER));
            }
            return read(stream);
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(id + ".xml"), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
