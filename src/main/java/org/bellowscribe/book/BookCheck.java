package org.bellowscribe.book;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;

/** Looks for what a schema cannot see: entries of a book that contradict each other. */
final class BookCheck {

    private final Book book;
    private final List<Diagnostic> problems = new ArrayList<>();

    BookCheck(Book book) {
        this.book = book;
    }

    /** Returns all that is wrong, with line and column; empty if nothing is. */
    List<Diagnostic> problems() {
        problems.addAll(book.wishes().contradictions());
        instruments();
        tunes();
        positions();
        return problems;
    }

    private void instruments() {
        Map<String, Place> ids = new HashMap<>();
        Map<String, Place> folders = new HashMap<>();
        for (BookInstrument instrument : book.instruments()) {
            problems.addAll(instrument.wishes().contradictions());
            once("instrument " + instrument.id(), instrument.id(), instrument.place(), ids);
            if (instrument.place().equals(ids.get(instrument.id()))) {
                String key = instrument.folder().toLowerCase(Locale.ROOT);
                once("folder " + instrument.folder(), key, instrument.place(), folders);
            }
        }
    }

    private void tunes() {
        Map<String, Place> files = new HashMap<>();
        for (BookTune tune : book.tunes()) {
            problems.addAll(tune.wishes().contradictions());
            once("tune " + tune.file(), normal(tune.file()), tune.place(), files);
            Map<String, Place> named = new HashMap<>();
            for (BookTune.Elsewise elsewise : tune.elsewise()) {
                problems.addAll(elsewise.wishes().contradictions());
                once("instrument " + elsewise.instrument(), elsewise.instrument(), elsewise.place(), named);
                requireInstrument(elsewise);
            }
        }
    }

    private void requireInstrument(BookTune.Elsewise elsewise) {
        List<String> ids = book.instruments().stream().map(BookInstrument::id).toList();
        if (!ids.contains(elsewise.instrument())) {
            List<String> near = NearestNames.of(elsewise.instrument(), ids);
            error(
                    elsewise.place(),
                    "The book has no instrument %s.".formatted(elsewise.instrument()),
                    near.isEmpty()
                            ? "It has: %s.".formatted(String.join(", ", ids))
                            : "Maybe %s is meant.".formatted(String.join(" or ", near)));
        }
    }

    private void positions() {
        Map<String, Place> taken = new HashMap<>();
        for (BookTune tune : book.tunes()) {
            if (tune.position() == 0) {
                continue;
            }
            if (!book.byLearning()) {
                error(
                        tune.place(),
                        "The position %d goes with order=\"by-learning\".".formatted(tune.position()),
                        "Maybe add that to <book>, or leave the position out: tunes stand as they are listed.");
            } else if (tune.position() > book.tunes().size()) {
                error(
                        tune.place(),
                        "The position %d is beyond the last of %d tunes."
                                .formatted(tune.position(), book.tunes().size()),
                        "Maybe position=\"%d\".".formatted(book.tunes().size()));
            }
            once("position " + tune.position(), String.valueOf(tune.position()), tune.place(), taken);
        }
    }

    private void once(String what, String key, Place place, Map<String, Place> seen) {
        Place earlier = seen.putIfAbsent(key, place);
        if (earlier != null) {
            error(
                    place,
                    "The %s is there twice; the first is at %s.".formatted(what, earlier.describe()),
                    "Maybe leave one of them out.");
        }
    }

    private static String normal(String file) {
        try {
            return Path.of(file).normalize().toString();
        } catch (InvalidPathException e) {
            // That there is no such file is said when it is looked for.
            return file;
        }
    }

    private void error(Place place, String text, String advice) {
        problems.add(Diagnostic.error(DiagnosticCode.BAD_DEFINITION, place, text, advice));
    }
}
