package org.bellowscribe.batch;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/**
 * What a run is asked to work on.
 *
 * @param inputs files, folders, patterns and lists as the user wrote them
 * @param selection which of what is found there counts
 * @param standardInput where a list may come from
 * @param beside what may be written beside the result of a file
 */
public record Wanted(
        List<String> inputs, Selection selection, InputStream standardInput, Function<Path, Beside> beside) {

    /**
     * What may be written beside a result.
     *
     * @param endings how the names of the files end
     * @param alternatives how many other ways to play the tune may be written
     */
    public record Beside(List<String> endings, int alternatives) {

        /** Nothing. */
        public static final Beside NOTHING = new Beside(List.of(), 0);

        /** Copies the list. */
        public Beside {
            endings = List.copyOf(endings);
        }
    }

    /** Copies the list. */
    public Wanted {
        inputs = List.copyOf(inputs);
    }

    /** Creates what asks for all scores of some inputs, with the same beside every result. */
    public static Wanted all(List<String> inputs, Beside beside) {
        return new Wanted(inputs, Selection.ALL, InputStream.nullInputStream(), file -> beside);
    }
}
