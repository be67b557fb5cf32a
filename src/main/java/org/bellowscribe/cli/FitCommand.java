package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.Batch;
import org.bellowscribe.batch.FitJob;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.FitOptions;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.report.FitCsv;
import org.bellowscribe.report.FitJson;
import org.bellowscribe.report.FitText;
import org.bellowscribe.report.FitWriter;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.jspecify.annotations.Nullable;

/** Ranks instruments and keys for tunes. */
final class FitCommand implements Command {

    private static final String INSTRUMENT = "instrument";
    private static final String ALL = "all";
    private static final String TRANSPOSE = "transpose";
    private static final String SOLVE = "solve";
    private static final String BEST = "best";
    private static final String FORMAT = "format";
    private static final String OUT = "out";
    private static final int USUAL_SOLVED = 1;
    private static final int USUAL_BEST = 5;
    private static final int MOST = 10_000;

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
    public Options options() {
        Options options = new Options();
        ValueOption.add(
                options, INSTRUMENT, "LIST|all", "Instruments (ids or files) with commas between; all if not given.");
        ValueOption.add(options, TRANSPOSE, "RANGES", "Transpositions, such as 0 or -5..7,12; -12..12 if not given.");
        ValueOption.add(
                options,
                SOLVE,
                "N",
                "How many trials of a tune to solve, the easiest-looking first; %d if not given. The others have an"
                                .formatted(USUAL_SOLVED)
                        + " estimate only.");
        ValueOption.add(
                options,
                BEST,
                "N",
                "How many trials of a tune to list; %d if not given, 0 for all.".formatted(USUAL_BEST));
        MannerOption.addTo(options);
        ValueOption.add(options, FORMAT, "text|csv|json", "How to write them; text if not given.");
        ValueOption.add(options, OUT, "FILE", "Write into this file instead of the terminal.");
        LineOptions.addTo(options);
        FileOptions.addThreadsTo(options);
        return options;
    }

    @Override
    public ExitCode run(CommandLine line, Terminal terminal) throws UsageException {
        List<Instrument> instruments = instruments(line.getOptionValue(INSTRUMENT, ALL));
        FitOptions options = new FitOptions(
                SemitoneRanges.parse(line.getOptionValue(TRANSPOSE, "-12..12")),
                number(line, SOLVE, USUAL_SOLVED),
                new SolverOptions(MannerOption.of(line), Times.AGAIN, true, FitOptions.CELL_LIMIT));
        FitWriter writer = writer(line);
        Sources sources = FileOptions.toRead(line, terminal);
        Path out = out(line, sources);
        int threads = FileOptions.threads(line);
        FitJob job = new FitJob(instruments, options, LineOptions.of(line));
        StringBuilder text = new StringBuilder(writer.begin());
        BookFit book = new BookFit(instruments);
        List<Result> done = new ArrayList<>();
        boolean quiet = line.hasOption(FileOptions.QUIET);
        Batch.run(sources.found(), job, threads, result -> {
            done.add(result);
            TuneFit fit = job.take(result.source());
            if (fit != null) {
                text.append(writer.tune(fit));
                book.add(fit);
            }
            remark(result, quiet, terminal);
        });
        sources.problems()
                .forEach(problem -> terminal.err().println(problem.diagnostic().print(problem.input())));
        text.append(writer.end(book));
        return write(text.toString(), out, terminal) && sources.problems().isEmpty() ? code(done) : worst(done);
    }

    private static void remark(Result result, boolean quiet, Terminal terminal) {
        for (Diagnostic diagnostic : result.diagnostics()) {
            if (!quiet || diagnostic.severity() != Severity.NOTE) {
                terminal.err().println(diagnostic.print(result.source().shown()));
            }
        }
    }

    private static ExitCode code(List<Result> done) {
        return done.stream().allMatch(Result::done) ? ExitCode.ALL_DONE : worst(done);
    }

    private static ExitCode worst(List<Result> done) {
        boolean broken = done.stream()
                .flatMap(result -> result.diagnostics().stream())
                .anyMatch(remark -> remark.code() == DiagnosticCode.INTERNAL);
        return broken ? ExitCode.BROKEN : ExitCode.SOME_FAILED;
    }

    private static boolean write(String text, @Nullable Path out, Terminal terminal) {
        if (out == null) {
            terminal.out().print(text);
            return true;
        }
        try {
            AtomicFile.write(out, text.getBytes(StandardCharsets.UTF_8));
            return true;
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(out.toString())));
            return false;
        }
    }

    private static @Nullable Path out(CommandLine line, Sources sources) throws UsageException {
        String name = line.getOptionValue(OUT);
        if (name == null) {
            return null;
        }
        Path out = FileOptions.path(name);
        if (Files.isDirectory(out)) {
            throw new UsageException("--out takes a file here, and %s is a folder.".formatted(name));
        }
        for (Source source : sources.found()) {
            if (source.file()
                    .toAbsolutePath()
                    .normalize()
                    .equals(out.toAbsolutePath().normalize())) {
                throw new UsageException("The result would take the place of the input %s.".formatted(source.shown()));
            }
        }
        return out;
    }

    private static FitWriter writer(CommandLine line) throws UsageException {
        int best = number(line, BEST, USUAL_BEST);
        String format = line.getOptionValue(FORMAT, "text");
        return switch (format) {
            case "text" -> new FitText(best);
            case "csv" -> new FitCsv(best);
            case "json" -> new FitJson(best);
            default -> throw new UsageException("--format takes text, csv or json, not %s.".formatted(format));
        };
    }

    private static int number(CommandLine line, String option, int usual) throws UsageException {
        String text = line.getOptionValue(option, String.valueOf(usual));
        if (!text.matches("\\d{1,5}") || Integer.parseInt(text) > MOST) {
            throw new UsageException("--%s takes a whole number from 0 to %d, not %s.".formatted(option, MOST, text));
        }
        return Integer.parseInt(text);
    }

    private static List<Instrument> instruments(String list) throws UsageException {
        if (list.equals(ALL)) {
            return InstrumentLibrary.all().stream()
                    .map(entry -> entry.instrument())
                    .toList();
        }
        Map<String, Instrument> found = new LinkedHashMap<>();
        for (String name : list.split(",", -1)) {
            Instrument instrument = MarkCommand.look(name.strip(), INSTRUMENT, InstrumentLibrary::find);
            if (found.put(instrument.id(), instrument) != null) {
                throw new UsageException("--instrument names %s twice.".formatted(instrument.id()));
            }
        }
        return List.copyOf(found.values());
    }
}
