package org.bellowscribe.cli.option;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
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
    public List<String> words() {
        return library.ids();
    }

    @Override
    public T read(String option, String text) throws UsageException {
        return find(library::find, option, text);
    }

    @Override
    public List<Path> files(String text) {
        return isFile(text) ? List.of(Path.of(text)) : List.of();
    }

    @Override
    public String fromFolder(Path folder, String text) {
        return isFile(text) ? folder.resolve(text).toString() : text;
    }

    // What else has no ending and no folder is a misspelled id, and is said to be one.
    private boolean isFile(String text) {
        try {
            return !library.ids().contains(text) && (Path.of(text).getNameCount() > 1 || text.endsWith(".xml"));
        } catch (InvalidPathException e) {
            return false;
        }
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
