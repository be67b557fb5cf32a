package org.bellowscribe.solver.manner;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.Library;
import org.bellowscribe.definition.LibraryFiles;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.solver.Manner;

/** The manners of playing that come with the tool, and the way to those of a user. */
public final class MannerLibrary {

    /** Id of the manner that is meant when nobody names one. */
    public static final String DEFAULT_ID = "along-the-row";

    /** Manners of the library in the order of {@link #all()}; a manner may be based on one before it. */
    private static final List<String> IDS =
            List.of(DEFAULT_ID, "across-the-rows", "chords-first", "learner", "air-study");

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("manner.xsd");
    private static final LibraryFiles FILES = new LibraryFiles("manners", SCHEMA);

    private static final Library<Manner> LIBRARY =
            new Library<>("manner", IDS, MannerLibrary::known, MannerLibrary::read);

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
        return MannerReader.read(SCHEMA.read(stream));
    }

    private static Manner known(String id) {
        return FILES.make(id, MannerReader::read);
    }
}
