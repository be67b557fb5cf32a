package org.bellowscribe.accompaniment.pattern;

import java.util.List;
import org.bellowscribe.accompaniment.Pattern;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.Library;
import org.bellowscribe.definition.LibraryFiles;
import org.bellowscribe.diagnostic.DiagnosedException;

/** The patterns of the left hand that come with the tool, and the way to those of a user. */
public final class PatternLibrary {

    /** In the order in which they are tried on a measure; of those with a use, the last suits every measure. */
    private static final List<String> IDS = List.of(
            "bass-chord-chord",
            "bass-chord-slow",
            "bass-chord",
            "alternating-bass",
            "three-basses-chord",
            "first-beat",
            "off-beat",
            "off-beat-waltz",
            "sustained",
            "jig",
            "bass-run");

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("pattern.xsd");
    private static final LibraryFiles FILES = new LibraryFiles("patterns", SCHEMA);
    private static final Library<Pattern> LIBRARY =
            new Library<>("pattern", IDS, PatternLibrary::known, stream -> PatternReader.pattern(SCHEMA.read(stream)));

    /** Read when they are first asked for. */
    private static final class Holder {
        static final List<Pattern> ALL = LIBRARY.all();
    }

    private PatternLibrary() {}

    /** Returns the library. */
    public static Library<Pattern> library() {
        return LIBRARY;
    }

    /** Returns the whole library. */
    public static List<Pattern> all() {
        return Holder.ALL;
    }

    /** Returns the choice by time and tempo alone. */
    public static PatternChoice usual() {
        return new PatternChoice(all(), List.of());
    }

    /**
     * Returns a pattern.
     *
     * @param idOrFile an id of the library, such as {@code bass-chord}, or the path of a pattern file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public static Pattern find(String idOrFile) throws DiagnosedException {
        return LIBRARY.find(idOrFile);
    }

    private static Pattern known(String id) {
        return FILES.make(id, PatternReader::pattern);
    }
}
