package org.bellowscribe.instrument.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.Library;
import org.bellowscribe.definition.LibraryFiles;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.InstrumentCheck;

/** The instruments that come with the tool, and the way to those of a user. */
public final class InstrumentLibrary {

    /** Id of the instrument that is meant when nobody names one. */
    public static final String DEFAULT_ID = "dg-21";

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("instrument.xsd");

    /** Read when an instrument is first asked for. */
    private static final class Holder {
        static final LibraryInstruments OURS = new LibraryInstruments(new LibraryFiles("instruments", SCHEMA));
    }

    private static final Library<LibraryEntry> LIBRARY = new Library<>(
            "instrument",
            () -> List.copyOf(Holder.OURS.ids()),
            id -> Objects.requireNonNull(Holder.OURS.find(id)),
            InstrumentLibrary::read);

    private InstrumentLibrary() {}

    /** Returns the library, families together. */
    public static Library<LibraryEntry> library() {
        return LIBRARY;
    }

    /** Returns the whole library, families together. */
    public static List<LibraryEntry> all() {
        return LIBRARY.all();
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
        LibraryEntry entry = Holder.OURS.find(idOrFile);
        if (entry != null) {
            return InstrumentCheck.of(entry.instrument());
        }
        InstrumentFaults faults = LIBRARY.read(idOrFile, InstrumentLibrary::faults);
        List<Diagnostic> all = new ArrayList<>(faults.errors());
        all.addAll(faults.doubts());
        return all;
    }

    private static InstrumentFaults faults(InputStream file) throws DiagnosedException, IOException {
        return InstrumentFaults.of(examined(file), Holder.OURS);
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
        LibraryEntry entry = Holder.OURS.find(idOrFile);
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
}
