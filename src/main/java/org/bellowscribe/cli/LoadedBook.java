package org.bellowscribe.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.bellowscribe.batch.EditionJobs;
import org.bellowscribe.batch.KeyInReach;
import org.bellowscribe.book.Book;
import org.bellowscribe.book.BookFile;
import org.bellowscribe.book.BookInstrument;
import org.bellowscribe.book.BookTune;
import org.bellowscribe.book.Wish;
import org.bellowscribe.definition.DefinitionFile;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;

/**
 * A book file with all that it names: found, read and without contradictions.
 *
 * @param book the book
 * @param editions one for each of its instruments
 */
record LoadedBook(Book book, List<Planned> editions) {

    private static final String KEY = "key";

    /** Finds what is wrong beyond what every run looks at. */
    @FunctionalInterface
    private interface Check {
        Collection<Diagnostic> problems(Book book, List<Planned> editions);
    }

    /**
     * An edition to be made.
     *
     * @param entry what the book says of the instrument
     * @param instrument the instrument
     * @param plan how a tune of which nothing is said is marked
     * @param tunes the tunes in the order of the book file
     */
    record Planned(BookInstrument entry, Instrument instrument, EditionJobs.Plan plan, List<PlannedTune> tunes) {}

    /**
     * A tune to be marked.
     *
     * @param entry what the book says of it
     * @param file its score
     * @param plan how to mark it
     */
    record PlannedTune(BookTune entry, Path file, EditionJobs.Plan plan) {}

    /**
     * Loads a book file.
     *
     * @param record true if every decision is to be written beside its sheet
     * @throws DiagnosedException with line and column, naming all that is wrong with it
     */
    static LoadedBook of(Path file, boolean record) throws DiagnosedException {
        return load(file, record, (book, editions) -> List.of());
    }

    /**
     * Loads a book file, and asks the scores too whether they can be in the keys that it names.
     *
     * @throws DiagnosedException with line and column, naming all that is wrong with it
     */
    static LoadedBook checked(Path file) throws DiagnosedException {
        return load(file, false, LoadedBook::unreachable);
    }

    private static LoadedBook load(Path file, boolean record, Check further) throws DiagnosedException {
        Path folder = Objects.requireNonNullElse(file.getParent(), Path.of(""));
        BookFile.Examined examined = read(file);
        BookScores scores = new BookScores(folder.resolve(examined.book().folder()));
        Book book = scores.found(examined.book());
        BookSettings settings = new BookSettings(folder, record);
        List<Planned> editions = new ArrayList<>();
        book.instruments().forEach(instrument -> editions.addAll(planned(book, instrument, scores, settings)));
        List<Diagnostic> problems = new ArrayList<>(examined.problems());
        problems.addAll(scores.problems());
        problems.addAll(settings.problems());
        problems.addAll(further.problems(book, editions));
        if (!problems.isEmpty()) {
            problems.sort(Comparator.comparingInt(
                            (Diagnostic problem) -> problem.place().line())
                    .thenComparingInt(problem -> problem.place().column()));
            throw new DiagnosedException(problems);
        }
        return new LoadedBook(book, editions);
    }

    private static Collection<Diagnostic> unreachable(Book book, List<Planned> editions) {
        KeyInReach keys = new KeyInReach();
        Set<Diagnostic> problems = new LinkedHashSet<>();
        for (Planned edition : editions) {
            for (PlannedTune tune : edition.tunes()) {
                Diagnostic objection = keys.objection(tune.file(), tune.plan().settings());
                Wish key = book.wishes(edition.entry(), tune.entry()).get(KEY);
                if (objection != null && key != null) {
                    problems.add(new Diagnostic(
                            objection.severity(),
                            DiagnosticCode.BAD_DEFINITION,
                            key.place(),
                            "%s: %s".formatted(tune.entry().file(), objection.text()),
                            objection.advice()));
                }
            }
        }
        return problems;
    }

    private static List<Planned> planned(
            Book book, BookInstrument instrument, BookScores scores, BookSettings settings) {
        EditionJobs.Plan usual = settings.plan(instrument, book.wishes(instrument), instrument.place());
        List<PlannedTune> tunes = new ArrayList<>();
        for (BookTune tune : book.tunesOn(instrument)) {
            EditionJobs.Plan plan = settings.plan(instrument, book.wishes(instrument, tune), tune.place());
            if (plan != null) {
                tunes.add(new PlannedTune(tune, scores.file(tune), plan));
            }
        }
        return usual == null
                ? List.of()
                : List.of(new Planned(instrument, usual.settings().instrument(), usual, tunes));
    }

    private static BookFile.Examined read(Path file) throws DiagnosedException {
        try (InputStream stream = DefinitionFile.open(file)) {
            return BookFile.read(stream, InstrumentLibrary.DEFAULT_ID);
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The book file cannot be read (%s).".formatted(Obstacle.of(e)),
                    "Maybe the path is misspelled."));
        }
    }
}
