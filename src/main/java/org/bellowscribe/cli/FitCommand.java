package org.bellowscribe.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.bellowscribe.batch.FitJob;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.Choice;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.FitOptions;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.LibraryEntry;
import org.bellowscribe.report.FitCsv;
import org.bellowscribe.report.FitJson;
import org.bellowscribe.report.FitText;
import org.bellowscribe.report.FitWriter;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.jspecify.annotations.Nullable;

/** Ranks instruments and keys for tunes. */
final class FitCommand implements Command {

    private static final int USUAL_SOLVED = 1;
    private static final int USUAL_BEST = 5;
    private static final int USUAL_SEMITONES = 12;
    private static final WholeNumber COUNT = new WholeNumber(0, 10_000);

    private static final CommandOption<List<LibraryEntry>> INSTRUMENT = new CommandOption<>(
            "instrument",
            "LIST|all",
            "Instruments (ids or files) with commas between; all if not given.",
            new InstrumentNames());
    private static final CommandOption<List<Integer>> TRANSPOSE =
            new CommandOption<>("transpose", "RANGES", "Transpositions; -12..12 if not given.", new SemitoneRanges());
    private static final CommandOption<Integer> SOLVE = new CommandOption<>(
            "solve",
            "N",
            "How many trials of a tune to solve, the easiest-looking first; %d if not given. The others have an estimate only."
                    .formatted(USUAL_SOLVED),
            COUNT);
    private static final CommandOption<Integer> BEST = new CommandOption<>(
            "best", "N", "How many trials of a tune to list; %d if not given, 0 for all.".formatted(USUAL_BEST), COUNT);
    private static final CommandOption<IntFunction<FitWriter>> FORMAT = CommandOption.choice(
            "format",
            "How to write them; text if not given.",
            new Choice<IntFunction<FitWriter>>()
                    .or("text", FitText::new)
                    .or("csv", FitCsv::new)
                    .or("json", FitJson::new));
    private static final CommandOption<Path> OUT =
            new CommandOption<>("out", "FILE", "Write into this file instead of the terminal.", new FilePath());

    @Override
    public String name() {
        return "fit";
    }

    @Override
    public String summary() {
        return "Ranks instruments and keys for each tune by what can be played and by cost, and tells which instrument"
                + " plays most of a book.";
    }

    @Override
    public String usage() {
        return "INPUT... [--out FILE]";
    }

    @Override
    public List<CommandOption<?>> options() {
        List<CommandOption<?>> options =
                new ArrayList<>(List.of(INSTRUMENT, TRANSPOSE, SOLVE, BEST, MarkOptions.MANNER, FORMAT, OUT));
        options.addAll(LineOptions.ALL);
        options.addAll(List.of(FileOptions.SHARD, FileOptions.JSON));
        options.addAll(FileOptions.READING);
        return options;
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        List<LibraryEntry> entries = words.get(INSTRUMENT, InstrumentNames.all());
        List<Instrument> instruments =
                entries.stream().map(LibraryEntry::instrument).toList();
        Sources sources = FileOptions.toRead(words, terminal);
        FitJob job = new FitJob(instruments, options(words, entries), LineOptions.of(words));
        BookFit book = new BookFit(instruments);
        if (words.has(FileOptions.JSON)) {
            refuseWithJson(words);
            FitLines lines = new FitLines(job, book, words.get(BEST, USUAL_BEST));
            return new BatchRun(words, sources, terminal).run(job, new JsonReport(name(), false, lines));
        }
        FitReport report = new FitReport(job, writer(words), book, out(words, sources));
        ExitCode code = new BatchRun(words, sources, terminal).run(job, report);
        return code == ExitCode.ALL_DONE && !report.isWritten() ? ExitCode.SOME_FAILED : code;
    }

    private static void refuseWithJson(CommandWords words) throws UsageException {
        for (CommandOption<?> option : List.of(FORMAT, OUT)) {
            if (words.has(option)) {
                throw new UsageException(
                        "--json prints lines as the tunes are tried: it takes no --%s.%n  Maybe --format json, which is one object for the book."
                                .formatted(option.name()));
            }
        }
    }

    private static FitOptions options(CommandWords words, List<LibraryEntry> entries) throws UsageException {
        List<Integer> usual =
                IntStream.rangeClosed(-USUAL_SEMITONES, USUAL_SEMITONES).boxed().toList();
        Map<String, Manner> manners = new HashMap<>();
        if (!words.has(MarkOptions.MANNER)) {
            for (LibraryEntry entry : entries) {
                manners.put(entry.instrument().id(), MarkOptions.usual(entry));
            }
        }
        return new FitOptions(
                words.get(TRANSPOSE, usual),
                words.get(SOLVE, USUAL_SOLVED),
                new SolverOptions(MarkOptions.manner(words), Times.AGAIN, true, FitOptions.CELL_LIMIT),
                manners);
    }

    private static FitWriter writer(CommandWords words) {
        return words.get(FORMAT, FitText::new).apply(words.get(BEST, USUAL_BEST));
    }

    private static @Nullable Path out(CommandWords words, Sources sources) throws UsageException {
        Path out = words.get(OUT);
        if (out == null) {
            return null;
        }
        if (Files.isDirectory(out)) {
            throw new UsageException("--out takes a file here, and %s is a folder.".formatted(out));
        }
        for (Source source : sources.found()) {
            if (real(source.file()).equals(real(out))) {
                throw new UsageException("The result would take the place of the input %s.".formatted(source.shown()));
            }
        }
        return out;
    }

    private static Path real(Path path) {
        return path.toAbsolutePath().normalize();
    }
}
