package org.bellowscribe.instrument.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.LibraryFiles;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.jspecify.annotations.Nullable;

/** The instruments that come with the tool. Their files are read at once, but each is made when it is first asked for. */
final class LibraryInstruments {

    /** Files of the library, in the order of {@link #ids()}; an instrument may be based on one before it. */
    private static final List<String> FAMILIES =
            List.of("one-row", "two-row", "semitone", "three-row", "club", "concertina");

    private final LibraryFiles files;
    private final Instrument defaults;
    private final Map<String, Defined> defined;
    private final Map<String, LibraryEntry> made = new HashMap<>();

    private record Defined(DefinitionElement element, String family) {}

    LibraryInstruments(LibraryFiles files) {
        this.files = files;
        this.defaults = defaults(files.root("defaults"));
        this.defined = Collections.unmodifiableMap(defined());
    }

    /** Returns what gives the bellows and reeds of an instrument that is based on none. */
    Instrument defaults() {
        return defaults;
    }

    /** Returns the ids of all, families together. */
    Set<String> ids() {
        return defined.keySet();
    }

    /** Returns one, or null if there is none of that id. */
    synchronized @Nullable LibraryEntry find(String id) {
        Defined found = defined.get(id);
        LibraryEntry known = made.get(id);
        if (known != null || found == null) {
            return known;
        }
        try {
            LibraryEntry entry = new InstrumentReader(this).read(found.element(), found.family());
            made.put(id, entry);
            return entry;
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(id), e);
        }
    }

    private Map<String, Defined> defined() {
        Map<String, Defined> elements = new LinkedHashMap<>();
        for (String family : FAMILIES) {
            DefinitionElement root = files.root(family);
            for (DefinitionElement element : root.children()) {
                String id = element.required("id");
                if (elements.put(id, new Defined(element, root.required("family"))) != null) {
                    throw new IllegalStateException("The id (%s) must be given once.".formatted(id));
                }
            }
        }
        return elements;
    }

    private static Instrument defaults(DefinitionElement root) {
        List<Diagnostic> problems = new ArrayList<>();
        // The file gives every value, so that nothing of these stays.
        Bellows noBellows = new Bellows(1, 0, 0, 0);
        AirModel noReeds = new AirModel(0, 0, 0, 0, List.of(), 0, 0, 0, 0);
        AirReader air = new AirReader(root, problems);
        return new Instrument("defaults", "defaults", List.of(), List.of(), air.bellows(noBellows), air.reeds(noReeds));
    }
}
