package org.bellowscribe.cli;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.batch.Selection;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.batch.Wanted;
import org.bellowscribe.book.Book;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.edition.EditionTune;
import org.bellowscribe.edition.FrontPage;
import org.bellowscribe.edition.NewWords;
import org.bellowscribe.edition.TextLines;

/** Makes the editions of a book file. */
final class BookRun {

    /** What a book file does not say. */
    private static final List<CommandOption<?>> TAKEN = List.of(
            FileOptions.OUT,
            FileOptions.THREADS,
            FileOptions.JSON,
            FileOptions.QUIET,
            FileOptions.VERBOSE,
            OutputOptions.RECORD);

    private static final int LINE = 72;

    private final CommandWords words;
    private final Terminal terminal;
    private final String name;

    BookRun(CommandWords words, Terminal terminal) {
        this.words = words;
        this.terminal = terminal;
        this.name = words.rest().get(0);
    }

    /** Makes all editions. */
    ExitCode run() throws UsageException {
        requireNoOthers();
        Path out = words.get(FileOptions.OUT);
        if (out == null) {
            throw new UsageException("Where should the editions go?%n  Maybe add --out and a folder.".formatted());
        }
        try {
            LoadedBook loaded = LoadedBook.of(Path.of(name), words.has(OutputOptions.RECORD));
            List<Sources> all = sources(loaded, out);
            if (all.stream().anyMatch(sources -> !sources.problems().isEmpty())) {
                return ExitCode.SOME_FAILED;
            }
            ExitCode worst = ExitCode.ALL_DONE;
            for (int i = 0; i < all.size(); i++) {
                ExitCode code = edition(loaded.book(), loaded.editions().get(i), all.get(i), out);
                worst = code.code() > worst.code() ? code : worst;
            }
            return worst;
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(name)));
            return ExitCode.SOME_FAILED;
        }
    }

    private void requireNoOthers() throws UsageException {
        if (words.rest().size() > 1) {
            throw new UsageException("A book file stands alone, without other inputs.");
        }
        for (CommandOption<?> option : MarkOptions.all()) {
            if (words.has(option) && !TAKEN.contains(option)) {
                throw new UsageException(
                        "--%s has no say about a book file.%n  Maybe leave it out, or write it as an attribute into the book file."
                                .formatted(option.name()));
            }
        }
    }

    private List<Sources> sources(LoadedBook loaded, Path out) {
        List<Sources> all = new ArrayList<>();
        for (LoadedBook.Planned planned : loaded.editions()) {
            Path folder = out.resolve(planned.entry().folder());
            List<String> files =
                    planned.tunes().stream().map(tune -> tune.file().toString()).toList();
            Map<Path, Wanted.Beside> beside = new HashMap<>();
            planned.tunes()
                    .forEach(tune -> beside.put(
                            tune.file(), new Wanted.Beside(tune.plan().outputs().endings(), 0)));
            Wanted wanted = new Wanted(
                    files,
                    Selection.ALL,
                    InputStream.nullInputStream(),
                    file -> beside.getOrDefault(file, Wanted.Beside.NOTHING));
            Sources sources = Sources.find(wanted, folder);
            sources.problems()
                    .forEach(problem ->
                            terminal.err().println(problem.diagnostic().print(problem.input())));
            all.add(sources);
        }
        return all;
    }

    private ExitCode edition(Book book, LoadedBook.Planned planned, Sources sources, Path out) {
        if (!words.has(FileOptions.JSON)) {
            terminal.out()
                    .println("%n%s (%s)"
                            .formatted(
                                    planned.instrument().name(), planned.entry().folder()));
        }
        EditionRun run = new EditionRun(book, planned, sources);
        BatchRun batch = new BatchRun(words, sources, terminal);
        batch.prepare(sources.found(), run.jobs().deciding());
        List<Source> ordered = run.ordered();
        EditionReport report =
                new EditionReport(run, out.resolve(planned.entry().folder()), report(planned));
        ExitCode code = batch.run(ordered, run.jobs().printing(source -> lines(run.marked(source), book)), report);
        return code == ExitCode.ALL_DONE && !report.isWritten() ? ExitCode.SOME_FAILED : code;
    }

    private Report report(LoadedBook.Planned planned) {
        return words.has(FileOptions.JSON)
                ? new JsonReport("mark", false, new EditionLines(planned.entry().folder()))
                : new MarkReport(MarkReport.Written.SCORES, false, true);
    }

    private static List<String> lines(EditionTune tune, Book book) {
        List<String> lines = new ArrayList<>();
        if (book.prints().contains(Book.Print.NOTES)) {
            tune.notes().forEach(note -> lines.addAll(TextLines.wrap(note, LINE)));
        }
        if (book.prints().contains(Book.Print.NEW)) {
            lines.addAll(NewWords.lines(
                    tune.news(), tune.style(), tune.tune().instrument().rows()));
        }
        if (book.prints().contains(Book.Print.LEGEND)) {
            lines.addAll(legend(tune));
        }
        return lines;
    }

    private static List<String> legend(EditionTune tune) {
        try {
            List<String> entries =
                    FrontPage.legend(tune).stream().map(BookRun::words).toList();
            return TextLines.of("Signs: ", entries, LINE);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Marks that were printed must be known.", e);
        }
    }

    private static String words(LegendEntry entry) {
        return entry.sign() + " " + entry.meaning();
    }
}
