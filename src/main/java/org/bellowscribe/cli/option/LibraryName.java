package org.bellowscribe.cli.option;

import org.bellowscribe.definition.Library;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;

/**
 * Reads the id of something of a library, or the path of a file that defines one.
 *
 * @param <T> what the library holds
 */
public final class LibraryName<T> implements ValueReader<T> {

    private final Library<T> library;

    /** Creates the reader of a library. */
    public LibraryName(Library<T> library) {
        this.library = library;
    }

    @Override
    public T read(String option, String text) throws UsageException {
        return find(library::find, option, text);
    }

    /**
     * A look-up by name that explains itself when it fails.
     *
     * @param <T> what is found
     */
    @FunctionalInterface
    public interface Finder<T> {

        /** Returns what has the name. */
        T find(String name) throws DiagnosedException;
    }

    /** Returns what an option names, or says what is wrong with the name. */
    public static <T> T find(Finder<T> finder, String option, String name) throws UsageException {
        try {
            return finder.find(name);
        } catch (DiagnosedException e) {
            StringBuilder lines = new StringBuilder();
            for (Diagnostic diagnostic : e.diagnostics()) {
                lines.append(lines.isEmpty() ? "" : "\n").append(diagnostic.print("--" + option + " " + name));
            }
            throw new UsageException(lines.toString(), e.diagnostics());
        }
    }
}
