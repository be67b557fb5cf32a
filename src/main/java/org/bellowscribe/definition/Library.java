package org.bellowscribe.definition;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;

/**
 * Things of one sort that are defined by data files: those that come with the tool, by their ids, and those of a user, by
 * the paths of their files.
 *
 * @param <T> the sort
 */
public final class Library<T> {

    private final String thing;
    private final Supplier<List<String>> ids;
    private final Function<String, T> known;
    private final Reading<T> reading;

    /**
     * Reads something from a data file.
     *
     * @param <R> what it reads
     */
    @FunctionalInterface
    public interface Reading<R> {

        /**
         * Reads the whole stream.
         *
         * @throws DiagnosedException if the file is wrong; lines and columns are those of the file
         * @throws IOException if the stream cannot be read
         */
        R read(InputStream file) throws DiagnosedException, IOException;
    }

    /**
     * Creates a library.
     *
     * @param thing what one is called, such as {@code style}; the command that lists them all is this with an s
     * @param ids ids of those that come with the tool, in the order of {@link #all()}
     * @param known gives one of them
     * @param reading reads one of a user
     */
    public Library(String thing, List<String> ids, Function<String, T> known, Reading<T> reading) {
        this(thing, () -> ids, known, reading);
    }

    /**
     * Creates a library whose ids take some work to find.
     *
     * @param thing what one is called, such as {@code style}; the command that lists them all is this with an s
     * @param ids gives the ids of those that come with the tool, in the order of {@link #all()}, always the same
     * @param known gives one of them
     * @param reading reads one of a user
     */
    public Library(String thing, Supplier<List<String>> ids, Function<String, T> known, Reading<T> reading) {
        this.thing = thing;
        this.ids = ids;
        this.known = known;
        this.reading = reading;
    }

    /** Returns what one is called, such as {@code style}. */
    public String thing() {
        return thing;
    }

    /** Returns the ids of those that come with the tool. */
    public List<String> ids() {
        return ids.get();
    }

    /** Returns those that come with the tool. */
    public List<T> all() {
        return ids().stream().map(known).toList();
    }

    /**
     * Returns one of those that come with the tool.
     *
     * @throws IllegalArgumentException if there is none of that id
     */
    public T of(String id) {
        if (!ids().contains(id)) {
            throw new IllegalArgumentException("The %s (%s) must be one of %s.".formatted(thing, id, ids()));
        }
        return known.apply(id);
    }

    /**
     * Returns one.
     *
     * @param idOrFile an id of the library or the path of a file
     * @throws DiagnosedException if it is neither, or the file is wrong; lines and columns are those of the file
     */
    public T find(String idOrFile) throws DiagnosedException {
        return ids().contains(idOrFile) ? known.apply(idOrFile) : read(idOrFile, reading);
    }

    /**
     * Reads the file of a name that is no id.
     *
     * @throws DiagnosedException if there is no such file, it cannot be read or it is wrong
     */
    public <R> R read(String name, Reading<R> otherwise) throws DiagnosedException {
        try (InputStream stream = DefinitionFile.open(path(name))) {
            return otherwise.read(stream);
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The %s file cannot be read (%s).".formatted(thing, Obstacle.of(e)),
                    "Maybe the path is misspelled, or %s.".formatted(meant(name))));
        }
    }

    private Path path(String name) throws DiagnosedException {
        try {
            Path file = Path.of(name);
            if (file.getNameCount() > 1 || name.endsWith(".xml") || (!name.isEmpty() && Files.exists(file))) {
                return file;
            }
        } catch (InvalidPathException e) {
            // Then it can only be an id.
        }
        throw new DiagnosedException(unknown(name, Place.FILE));
    }

    private String meant(String name) {
        List<String> near = UnknownName.near(name, ids());
        return near.isEmpty()
                ? "a name of the library is meant: the command %ss list shows all".formatted(thing)
                : "a name of the library is meant: %s".formatted(UnknownName.or(near));
    }

    /**
     * Returns what to say about an id that the library does not have.
     *
     * @param place where it stands, {@link Place#FILE} for the command line
     */
    public Diagnostic unknown(String id, Place place) {
        return UnknownName.diagnostic(thing, id, ids(), place);
    }
}
