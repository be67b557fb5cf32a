package org.bellowscribe.accompaniment.pattern;

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
import org.bellowscribe.accompaniment.Pattern;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;

/** The patterns of the left hand that come with the tool, and the way to those of a user. */
public final class PatternLibrary {

    private static final String FOLDER = "/org/bellowscribe/shared/patterns/";

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
    private static final Map<String, Pattern> PATTERNS = Collections.unmodifiableMap(load());

    private PatternLibrary() {}

    /** Returns the whole library. */
    public static List<Pattern> all() {
        return List.copyOf(PATTERNS.values());
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
        Pattern known = PATTERNS.get(idOrFile);
        if (known != null) {
            return known;
        }
        try {
            Path file = Path.of(idOrFile);
            if (file.getNameCount() > 1 || idOrFile.endsWith(".xml") || Files.exists(file)) {
                return read(file);
            }
        } catch (InvalidPathException e) {
            // Then it can only be an id.
        }
        List<String> near = NearestNames.of(idOrFile, PATTERNS.keySet());
        throw new DiagnosedException(Diagnostic.error(
                DiagnosticCode.UNKNOWN_NAME,
                Place.FILE,
                "The library has no pattern %s.".formatted(idOrFile),
                near.isEmpty()
                        ? "The library has: %s.".formatted(String.join(", ", PATTERNS.keySet()))
                        : "Maybe %s.".formatted(String.join(" or ", near))));
    }

    private static Pattern read(Path file) throws DiagnosedException {
        try (InputStream stream = Files.newInputStream(file)) {
            return PatternReader.pattern(SCHEMA.read(stream));
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The pattern file cannot be read (%s).".formatted(Obstacle.of(e)),
                    "Maybe the path is misspelled, or %s is meant as the id of a pattern: %s."
                            .formatted(file, String.join(", ", PATTERNS.keySet()))));
        }
    }

    private static Map<String, Pattern> load() {
        Map<String, Pattern> patterns = new LinkedHashMap<>();
        for (String id : IDS) {
            try (InputStream stream = PatternLibrary.class.getResourceAsStream(FOLDER + id + ".xml")) {
                if (stream == null) {
                    throw new IllegalStateException("The file (%s.xml) must be in %s.".formatted(id, FOLDER));
                }
                patterns.put(id, PatternReader.pattern(SCHEMA.read(stream)));
            } catch (DiagnosedException e) {
                throw new IllegalStateException(e.diagnostics().get(0).print(id), e);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return patterns;
    }
}
