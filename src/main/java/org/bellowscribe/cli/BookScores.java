package org.bellowscribe.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.book.Book;
import org.bellowscribe.book.BookTune;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;

/** Finds the scores of a book. */
final class BookScores {

    private final Path folder;
    private final Map<Path, BookTune> seen = new HashMap<>();
    private final List<Diagnostic> problems = new ArrayList<>();

    /**
     * Creates a search.
     *
     * @param folder the folder of the scores
     */
    BookScores(Path folder) {
        this.folder = folder;
    }

    /** Returns the book with all its tunes: those that it names, or those of its folder. */
    Book found(Book book) {
        if (!Files.isDirectory(folder)) {
            problem(
                    book.place(),
                    "There is no folder %s with the scores.".formatted(book.folder()),
                    "Maybe its path is not seen from the folder of the book file.");
            return book;
        }
        if (!book.tunes().isEmpty()) {
            book.tunes().forEach(this::require);
            return book;
        }
        List<String> names = names();
        if (names.isEmpty()) {
            problem(
                    book.place(),
                    "The folder %s holds no scores.".formatted(book.folder()),
                    "Maybe name another folder.");
        }
        return book.with(
                names.stream().map(name -> BookTune.plain(name, book.place())).toList());
    }

    /** Returns where the score of a tune is. */
    Path file(BookTune tune) {
        return folder.resolve(tune.file()).normalize();
    }

    /** Returns what is not there. */
    List<Diagnostic> problems() {
        return List.copyOf(problems);
    }

    private void require(BookTune tune) {
        try {
            if (Files.isRegularFile(file(tune))) {
                requireOnce(tune);
                requireOtherName(tune);
                return;
            }
        } catch (InvalidPathException | IOException e) {
            // Then there is no such file.
        }
        List<String> near = NearestNames.of(tune.file(), names());
        problem(
                tune.place(),
                "There is no score %s in the folder of the scores.".formatted(tune.file()),
                near.isEmpty()
                        ? "Maybe the attribute folder of <book> names another folder."
                        : "Maybe %s.".formatted(String.join(" or ", near)));
    }

    private void requireOnce(BookTune tune) throws IOException {
        BookTune earlier = seen.putIfAbsent(file(tune).toRealPath(), tune);
        if (earlier != null && !file(earlier).equals(file(tune))) {
            problem(
                    tune.place(),
                    "%s is the same file as %s at %s."
                            .formatted(
                                    tune.file(), earlier.file(), earlier.place().describe()),
                    "Maybe leave one of them out.");
        }
    }

    private void requireOtherName(BookTune tune) {
        String name = String.valueOf(file(tune).getFileName());
        String stem = name.replaceFirst("\\.[^.]*$", "").toLowerCase(Locale.ROOT);
        if (EditionNames.ALL.contains(stem)) {
            problem(
                    tune.place(),
                    "The sheets of %s would be called like the %s of the edition.".formatted(tune.file(), stem),
                    "Maybe give the score another name.");
        }
    }

    private List<String> names() {
        return Sources.find(List.of(folder.toString()), null, false).found().stream()
                .map(Source::file)
                .map(file -> folder.relativize(file).toString())
                .toList();
    }

    private void problem(Place place, String text, String advice) {
        problems.add(Diagnostic.error(DiagnosticCode.BAD_DEFINITION, place, text, advice));
    }
}
