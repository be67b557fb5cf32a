package org.bellowscribe.annotation.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;

/** The styles that come with the tool, and the way to those of a user. */
public final class StyleLibrary {

    /** Id of the style that is meant when nobody names one, and the base of styles that name none. */
    public static final String DEFAULT_ID = "parentheses";

    private static final String FOLDER = "/org/bellowscribe/shared/styles/";

    /** Styles of the library in the order of {@link #all()}; a style may be based on one before it. */
    private static final List<String> IDS = List.of(DEFAULT_ID, "two-lines");

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("style.xsd");
    private static final Map<String, DefinitionElement> ROOTS = Collections.unmodifiableMap(load());

    private StyleLibrary() {}

    /** Returns the whole library, the default style first. */
    public static List<Style> all() {
        return ROOTS.values().stream().map(StyleReader::style).toList();
    }

    /**
     * Returns a style.
     *
     * @param idOrFile an id of the library, such as {@code two-lines}, or the path of a style file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public static Style find(String idOrFile) throws DiagnosedException {
        DefinitionElement known = ROOTS.get(idOrFile);
        if (known != null) {
            return StyleReader.style(known);
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

    private static Style read(Path file) throws DiagnosedException {
        try (InputStream stream = Files.newInputStream(file)) {
            DefinitionElement root = SCHEMA.read(stream);
            return StyleReader.style(StyleReader.onBase(root, base(root)));
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The style file cannot be read (%s).".formatted(Obstacle.of(e)),
                    "Maybe the path is misspelled, or %s is meant as the id of a style: %s."
                            .formatted(file, String.join(", ", ROOTS.keySet()))));
        }
    }

    private static DefinitionElement base(DefinitionElement root) throws DiagnosedException {
        String id = root.attribute("base");
        DefinitionElement base = ROOTS.get(id == null ? DEFAULT_ID : id);
        if (base == null) {
            throw new DiagnosedException(unknown(String.valueOf(id), root.place()));
        }
        return base;
    }

    private static Diagnostic unknown(String id, Place place) {
        List<String> near = NearestNames.of(id, ROOTS.keySet());
        String text = "The library has no style %s.".formatted(id);
        String all = "The library has: %s.".formatted(String.join(", ", ROOTS.keySet()));
        return near.isEmpty()
                ? Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, place, text, all)
                : Diagnostic.error(
                        DiagnosticCode.UNKNOWN_NAME,
                        place,
                        text,
                        "Maybe %s.".formatted(String.join(" or ", near)),
                        all);
    }

    private static Map<String, DefinitionElement> load() {
        Map<String, DefinitionElement> roots = new LinkedHashMap<>();
        for (String id : IDS) {
            DefinitionElement root = root(id);
            DefinitionElement base = roots.get(String.valueOf(root.attribute("base")));
            roots.put(id, base == null ? root : StyleReader.onBase(root, base));
        }
        return roots;
    }

    private static DefinitionElement root(String id) {
        try (InputStream stream = StyleLibrary.class.getResourceAsStream(FOLDER + id + ".xml")) {
            if (stream == null) {
                throw new IllegalStateException("The file (%s.xml) must be in %s.".formatted(id, FOLDER));
            }
            return SCHEMA.read(stream);
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(id), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
