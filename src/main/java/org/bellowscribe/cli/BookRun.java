package org.bellowscribe.cli;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.batch.ReportFolder;
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
import org.bellowscribe.edition.NewWords;
import org.bellowscribe.page.IndexPart;
import org.jspecify.annotations.Nullable;

/** Makes the editions of a book file. */
final class BookRun {

    /** What a book file does not say. */
    private static final List<CommandOption<?>> TAKEN = List.of(
            FileOptions.OUT,
            FileOptions.THREADS,
            FileOptions.JSON,
            FileOptions.QUIET,
            FileOptions.VERBOSE,
            OutputOptions.RECORD,
            ReportOptions.REPORT,
            ReportOptions.REASONS);

    private static final String MARK = "mark";

    private final CommandWords words;
    private final Terminal terminal;
    private final String name;
    private final List<IndexPart> parts = new ArrayList<>();
    private @Nullable Path pages;

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
        pages = ReportOptions.path(words);
        try {
            LoadedBook loaded = LoadedBook.of(Path.of(name), words.has(OutputOptions.RECORD));
            List<Sources> all = sources(loaded, out);
            List<Sources.Problem> problems =
                    all.stream().flatMap(sources -> sources.problems().stream()).toList();
            if (!problems.isEmpty()) {
                return refuse(problems);
            }
            if (pages != null) {
                ReportFolder.begin(pages);
            }
            ExitCode worst = ExitCode.ALL_DONE;
            for (int i = 0; i < all.size(); i++) {
                ExitCode code = edition(loaded.book(), loaded.editions().get(i), all.get(i), out);
                worst = code.code() > worst.code() ? code : worst;
            }
            index(loaded.book());
            return worst;
        } catch (DiagnosedException e) {
            return refuse(e.diagnostics().stream()
                    .map(remark -> new Sources.Problem(name, remark))
                    .toList());
        }
    }

    private ExitCode refuse(List<Sources.Problem> problems) {
        if (words.has(FileOptions.JSON)) {
            new BookLines(MARK).wrong(problems, terminal);
        } else {
            problems.forEach(problem -> terminal.remark(problem.input(), problem.diagnostic()));
        }
        return ExitCode.SOME_FAILED;
    }

    private void index(Book book) throws DiagnosedException {
        if (pages != null) {
            Path index = ReportFolder.finish(pages, book.title(), parts);
            terminal.out().println("%nOpen the report in a browser: %s".formatted(index));
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
            all.add(Sources.find(wanted, folder));
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
        ReportFolder shown = show(planned, ordered, run);
        EditionReport report =
                new EditionReport(run, out.resolve(planned.entry().folder()), report(planned));
        ExitCode code =
                batch.run(ordered, run.jobs().printing(source -> EditionText.lines(run.marked(source), book)), report);
        if (shown != null) {
            parts.add(new IndexPart(planned.instrument().name(), shown.lines(report.results())));
        }
        return code == ExitCode.ALL_DONE && !report.isWritten() ? ExitCode.SOME_FAILED : code;
    }

    private Report report(LoadedBook.Planned planned) {
        return words.has(FileOptions.JSON)
                ? new JsonReport(MARK, false, new EditionLines(planned.entry().folder()))
                : new MarkReport(MarkReport.Written.SCORES, false, true);
    }

    private @Nullable ReportFolder show(LoadedBook.Planned planned, List<Source> ordered, EditionRun run) {
        if (pages == null) {
            return null;
        }
        ReportFolder.Choice choice =
                ReportOptions.choice(words, planned.entry().folder() + "/", source -> news(run.marked(source)));
        ReportFolder folder = new ReportFolder(pages, ordered, choice);
        run.jobs().show(folder);
        return folder;
    }

    private static List<String> news(EditionTune tune) {
        String all = NewWords.all(tune.news(), tune.style(), tune.tune().instrument());
        return all.isEmpty() ? List.of() : List.of(all.split("; "));
    }
}
