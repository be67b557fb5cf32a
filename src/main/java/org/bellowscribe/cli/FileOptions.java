package org.bellowscribe.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.bellowscribe.batch.Batch;
import org.bellowscribe.batch.Job;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Severity;

/** What all commands on files share: where results go, how many threads, and the report. */
final class FileOptions {

    static final String PIPE = "-";
    static final String OUT = "out";
    static final String IN_PLACE = "in-place";
    private static final String THREADS = "threads";
    static final String QUIET = "quiet";
    private static final int MOST_THREADS = 64;

    private FileOptions() {}

    static void addTo(Options options) {
        options.addOption(Option.builder()
                .longOpt(OUT)
                .hasArg()
                .argName("DIR")
                .desc("Folder for the results, under the names of their files.")
                .get());
        options.addOption(Option.builder()
                .longOpt(IN_PLACE)
                .desc("Put each result in place of its file, instead of --out.")
                .get());
        addThreadsTo(options);
    }

    /** Adds the options of a command that writes no score. */
    static void addThreadsTo(Options options) {
        options.addOption(Option.builder()
                .longOpt(THREADS)
                .hasArg()
                .argName("N")
                .desc("How many files to work on at a time; as many as there are processors if not given.")
                .get());
        options.addOption(Option.builder()
                .longOpt(QUIET)
                .desc("Print errors and warnings, but no notes.")
                .get());
    }

    /** Runs a job on the inputs of a line and reports. */
    static ExitCode run(CommandLine line, int alternatives, Job job, Report report, Terminal given)
            throws UsageException {
        boolean piped = line.getArgList().contains(PIPE);
        Sources sources = piped ? piped(line, given) : sources(line, alternatives);
        Terminal terminal = piped ? given.withoutOut() : given;
        int threads = threads(line);
        List<Source> files = sources.found();
        SteeringOptions.check(line, files.size());
        List<Result> done = new ArrayList<>();
        boolean quiet = line.hasOption(QUIET);
        report.begin(terminal);
        terminal.progress(0, files.size());
        Batch.run(files, job, threads, result -> {
            terminal.endProgress();
            done.add(result);
            report.each(result, terminal);
            for (Diagnostic diagnostic : result.diagnostics()) {
                if (!quiet || diagnostic.severity() != Severity.NOTE) {
                    terminal.err().println(diagnostic.print(result.source().shown()));
                }
            }
            terminal.progress(done.size(), files.size());
        });
        terminal.endProgress();
        List<Sources.Problem> remarks = new ArrayList<>(report.needsPins() ? sources.strayPins() : List.of());
        remarks.addAll(sources.problems());
        remarks.forEach(remark -> terminal.err().println(remark.diagnostic().print(remark.input())));
        List<String> failed = new ArrayList<>();
        done.stream()
                .filter(result -> !result.done())
                .forEach(result -> failed.add(result.source().shown()));
        sources.problems().forEach(problem -> failed.add(problem.input()));
        report.end(done, failed, terminal);
        if (done.stream().anyMatch(FileOptions::isBroken)) {
            return ExitCode.BROKEN;
        }
        return failed.isEmpty() ? ExitCode.ALL_DONE : ExitCode.SOME_FAILED;
    }

    private static boolean isBroken(Result result) {
        return result.diagnostics().stream().anyMatch(remark -> remark.code() == DiagnosticCode.INTERNAL);
    }

    private static Sources piped(CommandLine line, Terminal terminal) throws UsageException {
        if (line.getArgList().size() > 1) {
            throw new UsageException("The input - stands alone, without other inputs.");
        }
        for (String option : List.of(OUT, IN_PLACE, MarkCommand.RECORD, SteeringOptions.ALTERNATIVES)) {
            if (line.hasOption(option)) {
                throw new UsageException(
                        "--%s needs files: the result of the input - goes to standard output.%n".formatted(option)
                                + "  Maybe name the file instead of -, or leave out --%s.".formatted(option));
            }
        }
        if (LeftHandOptions.of(line).sheet()) {
            throw new UsageException(
                    "--%s sheet needs files: the result of the input - goes to standard output.%n  Maybe ask for part."
                            .formatted(LeftHandOptions.WRITTEN));
        }
        return Sources.piped(terminal.in(), terminal.out());
    }

    private static Sources sources(CommandLine line, int alternatives) throws UsageException {
        if (line.getArgList().isEmpty()) {
            throw new UsageException("No file or folder is named.");
        }
        boolean inPlace = line.hasOption(IN_PLACE);
        if (inPlace && line.hasOption(OUT)) {
            throw new UsageException("--out and --in-place exclude each other.");
        }
        if (SteeringOptions.onlyAsks(line)) {
            return Sources.find(line.getArgList(), null, false);
        }
        if (inPlace && LeftHandOptions.of(line).sheet()) {
            throw new UsageException("--%s sheet goes with --out: beside your scores it would be taken for one of them."
                    .formatted(LeftHandOptions.WRITTEN));
        }
        if (!inPlace && !line.hasOption(OUT)) {
            throw new UsageException("Where should the results go?\n  Maybe add --out and a folder.");
        }
        Path folder = inPlace ? null : folder(line.getOptionValue(OUT));
        List<String> beside = new ArrayList<>();
        if (line.hasOption(MarkCommand.RECORD)) {
            beside.add(Source.RECORD);
        }
        if (LeftHandOptions.of(line).sheet()) {
            beside.add(Source.LEFT_HAND);
        }
        return Sources.find(line.getArgList(), folder, beside, alternatives);
    }

    /** Returns the files of a line that are only read. */
    static Sources toRead(CommandLine line, Terminal terminal) throws UsageException {
        if (line.getArgList().isEmpty()) {
            throw new UsageException("No file or folder is named.");
        }
        if (!line.getArgList().contains(PIPE)) {
            return Sources.find(line.getArgList(), null, false);
        }
        if (line.getArgList().size() > 1) {
            throw new UsageException("The input - stands alone, without other inputs.");
        }
        return Sources.piped(terminal.in(), terminal.out());
    }

    /** Returns the path of a name. */
    static Path path(String name) throws UsageException {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new UsageException("No file can have the name %s.".formatted(name));
        }
    }

    private static Path folder(String name) throws UsageException {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new UsageException("No folder can have the name %s.".formatted(name));
        }
    }

    static int threads(CommandLine line) throws UsageException {
        String text = line.getOptionValue(THREADS);
        if (text == null) {
            return Runtime.getRuntime().availableProcessors();
        }
        try {
            int threads = Integer.parseInt(text);
            if (threads >= 1 && threads <= MOST_THREADS) {
                return threads;
            }
        } catch (NumberFormatException e) {
            // Said below, like a number out of range.
        }
        throw new UsageException("--threads takes a whole number from 1 to %d, not %s.".formatted(MOST_THREADS, text));
    }
}
