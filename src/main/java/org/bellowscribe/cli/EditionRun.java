package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.batch.EditionJobs;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.book.Book;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.edition.Edition;
import org.bellowscribe.edition.EditionTune;
import org.bellowscribe.marking.Decision;
import org.bellowscribe.syllabus.LearningOrder;
import org.bellowscribe.syllabus.Thing;
import org.bellowscribe.syllabus.TuneThings;

/** The tunes of an edition after they were decided: in what order, and what is new in each. */
final class EditionRun {

    private final Book book;
    private final LoadedBook.Planned planned;
    private final EditionJobs jobs;
    private final Map<Source, LoadedBook.PlannedTune> tunes = new LinkedHashMap<>();
    private final List<Source> ordered = new ArrayList<>();
    private final Map<Source, EditionTune> marked = new LinkedHashMap<>();
    private String order = "";

    /**
     * Creates a run.
     *
     * @param sources the scores with where their sheets go
     */
    EditionRun(Book book, LoadedBook.Planned planned, Sources sources) {
        this.book = book;
        this.planned = planned;
        Map<Path, LoadedBook.PlannedTune> byFile = new LinkedHashMap<>();
        planned.tunes().forEach(tune -> byFile.put(tune.file(), tune));
        sources.found().forEach(source -> tunes.put(source, Objects.requireNonNull(byFile.get(source.file()))));
        jobs = new EditionJobs(source -> tune(source).plan());
    }

    private LoadedBook.PlannedTune tune(Source source) {
        return Objects.requireNonNull(tunes.get(source), "every source is a tune of the book");
    }

    /** Returns the work on the tunes. */
    EditionJobs jobs() {
        return jobs;
    }

    /** Puts the tunes that were decided in order, those that were refused behind them; returns all. */
    List<Source> ordered() {
        List<Source> decided = tunes.keySet().stream()
                .filter(source -> jobs.decided(source) != null)
                .toList();
        List<SortedSet<Thing>> things = decided.stream()
                .map(source -> TuneThings.of(decision(source).tune()))
                .toList();
        LearningOrder found =
                book.byLearning() ? LearningOrder.least(things, positions(decided)) : LearningOrder.asListed(things);
        for (int i = 0; i < decided.size(); i++) {
            Source source = decided.get(found.tunes().get(i));
            ordered.add(source);
            marked.put(source, editionTune(source, found.news().get(i)));
        }
        order = words(found);
        List<Source> all = new ArrayList<>(ordered);
        tunes.keySet().stream().filter(source -> !marked.containsKey(source)).forEach(all::add);
        return all;
    }

    private Decision.Decided decision(Source source) {
        return Objects.requireNonNull(jobs.decided(source));
    }

    /** Tunes that are left out or refused leave no gaps: a position beyond the last that is left is the last that is. */
    private List<Integer> positions(List<Source> decided) {
        List<Integer> positions = new ArrayList<>();
        decided.forEach(source -> positions.add(0));
        List<Integer> fixed = new ArrayList<>();
        for (int i = 0; i < decided.size(); i++) {
            if (tune(decided.get(i)).entry().position() > 0) {
                fixed.add(i);
            }
        }
        fixed.sort(Comparator.comparingInt(i -> tune(decided.get(i)).entry().position()));
        for (int i = 0; i < fixed.size(); i++) {
            int last = decided.size() - (fixed.size() - 1 - i);
            positions.set(
                    fixed.get(i),
                    Math.min(tune(decided.get(fixed.get(i))).entry().position(), last));
        }
        return positions;
    }

    private String words(LearningOrder found) {
        Wordings<BookText> texts = planned.plan().settings().style().book();
        BookText text = !book.byLearning() ? BookText.LISTED : found.isProved() ? BookText.LEAST : BookText.NEARLY;
        return texts.say(text, Map.of("sum", found.cost(), "more", found.cost() - found.bound()));
    }

    private EditionTune editionTune(Source source, SortedSet<Thing> news) {
        LoadedBook.PlannedTune tune = tune(source);
        Decision.Decided decision = decision(source);
        String title = tune.entry().title().isEmpty()
                ? decision.tune().tune().title()
                : tune.entry().title();
        return new EditionTune(
                title,
                String.valueOf(source.target().getFileName()),
                List.of(),
                decision.tune(),
                tune.plan().settings().style(),
                tune.plan().settings().marks(),
                Difficulty.of(decision.tune(), tune.plan().outputs().grades().grading()),
                news,
                tune.entry().notes(),
                List.of());
    }

    /** Returns the tune of a source that was decided. */
    EditionTune marked(Source source) {
        return Objects.requireNonNull(marked.get(source));
    }

    /**
     * Returns the edition.
     *
     * @param results what became of each tune
     */
    Edition edition(List<Result> results) {
        Map<Source, Result> bySource = new HashMap<>();
        results.forEach(result -> bySource.put(result.source(), result));
        return new Edition(
                book.title(),
                planned.instrument(),
                planned.plan().settings().style(),
                book.texts().stream()
                        .map(text -> new Edition.Paragraph(text.heading(), text.text()))
                        .toList(),
                ordered.stream()
                        .filter(source -> written(bySource, source).done())
                        .map(source ->
                                marked(source).written(jobs.sheetsBeside(source), problems(written(bySource, source))))
                        .toList(),
                results.stream()
                        .filter(result -> !result.done())
                        .map(EditionRun::refused)
                        .toList(),
                order);
    }

    private static Result written(Map<Source, Result> results, Source source) {
        return Objects.requireNonNull(results.get(source), "every tune has its result");
    }

    private static List<String> problems(Result result) {
        return result.diagnostics().stream()
                .filter(remark -> remark.severity() == Severity.WARNING || remark.code() == DiagnosticCode.ONCE_ONLY)
                .map(Diagnostic::text)
                .toList();
    }

    private static Edition.Refused refused(Result result) {
        Diagnostic error = result.firstError();
        String file = result.source().name();
        return new Edition.Refused(
                result.title().isEmpty() ? file : result.title(), file, error == null ? "" : error.text());
    }
}
