package org.bellowscribe.instrument.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.Library;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.InstrumentCheck;

/** The instruments that come with the tool, and the way to those of a user. */
public final class InstrumentLibrary {

    /** Id of the instrument that is meant when nobody names one. */
    public static final String DEFAULT_ID = "dg-21";

    private static final String FOLDER = "/org/bellowscribe/shared/instruments/";

    /** Files of the library, in the order of {@link #all()}; an instrument may be based on one before it. */
    private static final List<String> FILES =
            List.of("one-row.xml", "two-row.xml", "semitone.xml", "three-row.xml", "club.xml", "concertina.xml");

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("instrument.xsd");
    private static final Instrument DEFAULTS = defaults();
    private static final Map<String, LibraryEntry> ENTRIES = Collections.unmodifiableMap(load());

    private static final Library<LibraryEntry> LIBRARY = new Library<>(
            "instrument",
            List.copyOf(ENTRIES.keySet()),
            id -> Objects.requireNonNull(ENTRIES.get(id)),
            InstrumentLibrary::read);

    private InstrumentLibrary() {}

    /** Returns the library, families together. */
    public static Library<LibraryEntry> library() {
        return LIBRARY;
    }

    /** Returns the whole library, families together. */
    public static List<LibraryEntry> all() {
        return List.copyOf(ENTRIES.values());
    }

    /**
     * Returns an instrument.
     *
     * @param idOrFile an id of the library, such as {@code dg-21}, or the path of an instrument file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public static Instrument find(String idOrFile) throws DiagnosedException {
        return entry(idOrFile).instrument();
    }

    /**
     * Returns an instrument with what its file says about it.
     *
     * @param idOrFile an id of the library, such as {@code dg-21}, or the path of an instrument file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public static LibraryEntry entry(String idOrFile) throws DiagnosedException {
        return LIBRARY.find(idOrFile);
    }

    /**
     * Looks for everything that is wrong with an instrument, whatever of it the schema objects to.
     *
     * @param idOrFile as for {@link #find}
     * @return errors, then doubts; empty if there is nothing to say
     * @throws DiagnosedException if it is neither an id nor a file that can be read
     */
    public static List<Diagnostic> check(String idOrFile) throws DiagnosedException {
        LibraryEntry entry = ENTRIES.get(idOrFile);
        if (entry != null) {
            return InstrumentCheck.of(entry.instrument());
        }
        InstrumentFaults faults = LIBRARY.read(idOrFile, InstrumentLibrary::faults);
        List<Diagnostic> all = new ArrayList<>(faults.errors());
        all.addAll(faults.doubts());
        return all;
    }

    private static InstrumentFaults faults(InputStream file) throws DiagnosedException, IOException {
        return InstrumentFaults.of(examined(file), ENTRIES, DEFAULTS);
    }

    private static LibraryEntry read(InputStream file) throws DiagnosedException, IOException {
        InstrumentFaults faults = faults(file);
        if (faults.entry() == null) {
            throw new DiagnosedException(faults.errors());
        }
        return faults.entry();
    }

    /**
     * Begins an instrument file that is an instrument but for what will be changed: one of the library by reference, one
     * of a user as a copy.
     *
     * @param idOrFile as for {@link #find}
     * @throws DiagnosedException if it is neither, or the file is wrong
     */
    public static InstrumentCopy copy(String idOrFile) throws DiagnosedException {
        LibraryEntry entry = ENTRIES.get(idOrFile);
        if (entry != null) {
            return InstrumentCopy.basedOn(entry.instrument());
        }
        entry(idOrFile);
        return InstrumentCopy.of(
                LIBRARY.read(idOrFile, InstrumentLibrary::examined).root());
    }

    private static DefinitionSchema.Examined examined(InputStream file) throws DiagnosedException, IOException {
        DefinitionSchema.Examined examined = SCHEMA.examine(file);
        DefinitionElement root = examined.root();
        if (!root.name().equals("instrument")) {
            throw new DiagnosedException(
                    examined.remarks().isEmpty()
                            ? List.of(Diagnostic.error(
                                    DiagnosticCode.BAD_DEFINITION,
                                    root.place(),
                                    "The root element is <%s>, but an instrument file holds one <instrument>."
                                            .formatted(root.name()),
                                    "Maybe put each instrument into a file of its own."))
                            : examined.remarks());
        }
        return examined;
    }

    private static Map<String, LibraryEntry> load() {
        Map<String, LibraryEntry> entries = new LinkedHashMap<>();
        for (String file : FILES) {
            try {
                DefinitionElement root = root(file);
                for (DefinitionElement element : root.children()) {
                    LibraryEntry entry = new InstrumentReader(entries, DEFAULTS).read(element, root.required("family"));
                    if (entries.put(entry.instrument().id(), entry) != null) {
                        throw new IllegalStateException("The id (%s) must be given once."
                                .formatted(entry.instrument().id()));
                    }
                }
            } catch (DiagnosedException e) {
                throw wrong(file, e);
            }
        }
        return entries;
    }

    private static Instrument defaults() {
        List<Diagnostic> problems = new ArrayList<>();
        // The file gives every value, so that nothing of these stays.
        Bellows noBellows = new Bellows(1, 0, 0, 0);
        AirModel noReeds = new AirModel(0, 0, 0, 0, List.of(), 0, 0, 0, 0);
        AirReader air = new AirReader(root("defaults.xml"), problems);
        return new Instrument("defaults", "defaults", List.of(), List.of(), air.bellows(noBellows), air.reeds(noReeds));
    }

    private static DefinitionElement root(String file) {
        try (InputStream stream = InstrumentLibrary.class.getResourceAsStream(FOLDER + file)) {
            if (stream == null) {
                throw new IllegalStateException("The file (%s) must be in %s.".formatted(file, FOLDER));
            }
            return SCHEMA.read(stream);
        } catch (DiagnosedException e) {
            throw wrong(file, e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static IllegalStateException wrong(String file, DiagnosedException e) {
        return new IllegalStateException(e.diagnostics().get(0).print(file), e);
    }
}
