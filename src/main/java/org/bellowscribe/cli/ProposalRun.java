package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.FitJob;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.book.BookProposal;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.FitOptions;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.KeyName;
import org.jspecify.annotations.Nullable;

/** Proposes a book file for a folder: the instrument that has the notes of most tunes, and keys in which it plays them. */
final class ProposalRun {

    static final CommandOption<List<LibraryEntry>> INSTRUMENT = new CommandOption<>(
            "instrument",
            "LIST|all",
            "With new: instruments to choose from (ids or files) with commas between; all if not given.",
            new InstrumentNames());

    private static final int OCTAVE = 12;
    private static final List<Integer> AS_WRITTEN = List.of(0);

    private final Path folder;
    private final @Nullable Path out;
    private final CommandWords words;
    private final Terminal terminal;
    private final Map<Source, String> books = new LinkedHashMap<>();

    /**
     * Creates a run.
     *
     * @param out the file to write; null for the terminal
     */
    ProposalRun(Path folder, @Nullable Path out, CommandWords words, Terminal terminal) {
        this.folder = folder;
        this.out = out;
        this.words = words;
        this.terminal = terminal;
    }

    /** Proposes. */
    ExitCode run() {
        Sources sources = Sources.find(List.of(folder.toString()), null, false);
        sources.problems()
                .forEach(problem -> terminal.err().println(problem.diagnostic().print(problem.input())));
        List<Instrument> candidates = words.get(INSTRUMENT, InstrumentNames.all()).stream()
                .map(LibraryEntry::instrument)
                .toList();
        Map<Source, TuneFit> seen = fits(sources, sources.found(), candidates, new Range(AS_WRITTEN, 0));
        if (seen.isEmpty()) {
            return ExitCode.SOME_FAILED;
        }
        BookFit book = new BookFit(candidates);
        seen.values().forEach(book::add);
        Instrument best = best(book.lines());
        Map<Source, TuneFit> written =
                fits(sources, List.copyOf(seen.keySet()), List.of(best), new Range(AS_WRITTEN, 1));
        List<Source> others = written.keySet().stream()
                .filter(source -> first(written, source).verdict() != Trial.Verdict.FITS)
                .toList();
        List<Integer> keys = IntStream.rangeClosed(-OCTAVE, OCTAVE).boxed().toList();
        Map<Source, TuneFit> moved = fits(sources, others, List.of(best), new Range(keys, 1));
        List<BookProposal.Entry> entries = written.keySet().stream()
                .map(source -> entry(source, Objects.requireNonNull(moved.getOrDefault(source, written.get(source)))))
                .toList();
        return write(new BookProposal(title(), seenFrom(out), best.id(), remarks(book, best, entries), entries));
    }

    /** Which keys to try and how many of them to solve. */
    private record Range(List<Integer> semitones, int solved) {}

    private Map<Source, TuneFit> fits(Sources sources, List<Source> files, List<Instrument> instruments, Range range) {
        SolverOptions solver =
                new SolverOptions(MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, FitOptions.CELL_LIMIT);
        FitJob job = new FitJob(
                instruments, new FitOptions(range.semitones(), range.solved(), solver), ReadingOptions.DEFAULT);
        new BatchRun(words, sources, terminal).prepare(files, job);
        Map<Source, TuneFit> fits = new LinkedHashMap<>();
        for (Source source : files) {
            TuneFit fit = job.take(source);
            if (fit == null) {
                terminal.err()
                        .println("%s: left out: it cannot be read; the command mark says why."
                                .formatted(source.shown()));
            } else {
                fits.put(source, fit);
                books.put(source, job.bookTitle(source));
            }
        }
        return fits;
    }

    // The usual instrument where none plays more.
    private static Instrument best(List<BookFit.Line> lines) {
        int most = lines.get(0).plays();
        return lines.stream()
                .filter(line -> line.plays() == most)
                .map(BookFit.Line::instrument)
                .filter(instrument -> instrument.id().equals(InstrumentLibrary.DEFAULT_ID))
                .findFirst()
                .orElse(lines.get(0).instrument());
    }

    private static Trial first(Map<Source, TuneFit> fits, Source source) {
        return Objects.requireNonNull(fits.get(source)).trials().get(0);
    }

    private BookProposal.Entry entry(Source source, TuneFit fit) {
        Trial trial = fit.trials().get(0);
        Diagnostic obstacle = trial.obstacle();
        String key = trial.soundingKey(fit.tune()).name();
        return new BookProposal.Entry(
                folder.relativize(source.file()).toString(),
                fit.tune().title(),
                obstacle == null && KeyName.parse(key) != null ? key : "",
                obstacle == null ? "" : obstacle.text());
    }

    /** Returns the title of the book that all scores are taken from, else the name of their folder. */
    private String title() {
        List<String> titles = books.values().stream().distinct().toList();
        return titles.size() == 1 && !titles.get(0).isEmpty()
                ? titles.get(0)
                : String.valueOf(folder.toAbsolutePath().normalize().getFileName());
    }

    private String seenFrom(@Nullable Path file) {
        Path from = file == null
                ? Path.of("").toAbsolutePath()
                : file.toAbsolutePath().normalize().getParent();
        Path absolute = folder.toAbsolutePath().normalize();
        String path =
                from == null ? absolute.toString() : from.relativize(absolute).toString();
        return path.isEmpty() ? "." : path;
    }

    private static List<String> remarks(BookFit book, Instrument best, List<BookProposal.Entry> entries) {
        List<String> remarks = new ArrayList<>();
        long played =
                entries.stream().filter(entry -> entry.obstacle().isEmpty()).count();
        remarks.add(
                "%s plays %d of %d tunes in the keys given here. key is the key to play in: change it, or leave it out for that of the score."
                        .formatted(best.name(), played, entries.size()));
        book.lines().stream()
                .filter(line -> !line.instrument().equals(best))
                .limit(2)
                .forEach(line -> remarks.add("%s (%s) has the notes of %d of them as they are written."
                        .formatted(line.instrument().name(), line.instrument().id(), line.plays())));
        return remarks;
    }

    private ExitCode write(BookProposal proposal) {
        if (out == null) {
            terminal.out().print(proposal.xml());
            return ExitCode.ALL_DONE;
        }
        try {
            AtomicFile.write(out, proposal.xml().getBytes(StandardCharsets.UTF_8));
            terminal.out().println("Written: %s. Edit it, then: mark %s --out DIR".formatted(out, out));
            return ExitCode.ALL_DONE;
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(out.toString())));
            return ExitCode.SOME_FAILED;
        }
    }
}
