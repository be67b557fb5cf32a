package org.bellowscribe.annotation.style;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.Library;
import org.bellowscribe.definition.LibraryFiles;
import org.bellowscribe.diagnostic.DiagnosedException;

/** The styles that come with the tool, and the way to those of a user. */
public final class StyleLibrary {

    /** Id of the style that is meant when nobody names one, and the base of styles that name none. */
    public static final String DEFAULT_ID = "parentheses";

    /** Styles of the library in the order of {@link #all()}; a style may be based on one before it. */
    private static final List<String> IDS = List.of(
            DEFAULT_ID,
            "two-lines",
            "rows",
            "compact",
            "beginner",
            "fingers",
            "apart",
            "german",
            "french",
            "italian",
            "spanish",
            "dutch",
            "swedish",
            "catalan");

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("style.xsd");
    private static final LibraryFiles FILES = new LibraryFiles("styles", SCHEMA);

    private static final Library<Style> LIBRARY = new Library<>("style", IDS, StyleLibrary::known, StyleLibrary::read);

    private StyleLibrary() {}

    /** Returns the library, the default style first. */
    public static Library<Style> library() {
        return LIBRARY;
    }

    /** Returns the whole library, the default style first. */
    public static List<Style> all() {
        return LIBRARY.all();
    }

    private static Style known(String id) {
        return StyleReader.style(whole(id));
    }

    /**
     * Returns a style.
     *
     * @param idOrFile an id of the library, such as {@code two-lines}, or the path of a style file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public static Style find(String idOrFile) throws DiagnosedException {
        return LIBRARY.find(idOrFile);
    }

    /**
     * Returns what a style does not say itself, nor the style that it is based on, so that it is as in the default style, in
     * English: for each element its name and the attributes, such as {@code words: hand, opening}.
     *
     * @param idOrFile an id of the library or the path of a style file
     * @throws DiagnosedException if it is neither, or the file is wrong
     */
    public static List<String> inherited(String idOrFile) throws DiagnosedException {
        DefinitionElement root = IDS.contains(idOrFile) ? FILES.root(idOrFile) : LIBRARY.read(idOrFile, SCHEMA::read);
        String base = root.attribute("base");
        DefinitionElement own = base == null || base.equals(DEFAULT_ID) || !IDS.contains(base)
                ? root
                : StyleReader.onBase(root, FILES.root(base));
        return StyleReader.missing(own, whole(DEFAULT_ID));
    }

    private static Style read(InputStream stream) throws DiagnosedException, IOException {
        DefinitionElement root = SCHEMA.read(stream);
        String named = root.attribute("base");
        String base = named == null ? DEFAULT_ID : named;
        if (!IDS.contains(base)) {
            throw new DiagnosedException(LIBRARY.unknown(base, root.place()));
        }
        return StyleReader.style(StyleReader.onBase(root, whole(base)));
    }

    /** Returns a style of the library with everything that it takes from its base. */
    private static DefinitionElement whole(String id) {
        DefinitionElement root = FILES.root(id);
        String base = root.attribute("base");
        return base == null ? root : StyleReader.onBase(root, whole(base));
    }
}
