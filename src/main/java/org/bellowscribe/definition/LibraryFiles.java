package org.bellowscribe.definition;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * The data files of one sort that come with the tool. They are read without their schema, whose compilation would cost
 * more than all the rest: that each says the same with it is for a test to see.
 */
public final class LibraryFiles {

    private final String folder;
    private final DefinitionSchema schema;

    /**
     * Makes nothing yet.
     *
     * @param folder folder of the files, such as {@code instruments}
     * @param schema their schema
     */
    public LibraryFiles(String folder, DefinitionSchema schema) {
        this.folder = "/org/bellowscribe/shared/" + folder + "/";
        this.schema = schema;
    }

    /**
     * Makes something of a root element.
     *
     * @param <T> what it makes
     */
    @FunctionalInterface
    public interface Making<T> {

        /**
         * Makes it.
         *
         * @throws DiagnosedException if the file is wrong
         */
        T of(DefinitionElement root) throws DiagnosedException;
    }

    /**
     * Reads a file.
     *
     * @param name its name without {@code .xml}
     * @return the root element
     */
    public DefinitionElement root(String name) {
        return make(name, root -> root);
    }

    /**
     * Reads a file and makes something of it.
     *
     * @param name its name without {@code .xml}
     * @throws IllegalStateException if it is not there, or is wrong
     */
    public <T> T make(String name, Making<T> making) {
        try (InputStream stream = LibraryFiles.class.getResourceAsStream(folder + name + ".xml")) {
            if (stream == null) {
                throw new IllegalStateException("The file (%s.xml) must be in %s.".formatted(name, folder));
            }
            return making.of(schema.readAsValid(stream));
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(name + ".xml"), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
