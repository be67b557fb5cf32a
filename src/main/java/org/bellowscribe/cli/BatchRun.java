package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.batch.Batch;
import org.bellowscribe.batch.Job;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;

/** A job on all files of a line, told as it goes on. */
final class BatchRun {

    private final Sources sources;
    private final int threads;
    private final Notes notes;
    private final Terminal terminal;

    /**
     * Creates a run.
     *
     * @param words the line
     * @param sources its files
     * @param terminal where to tell
     */
    BatchRun(CommandWords words, Sources sources, Terminal terminal) {
        this.sources = sources;
        this.terminal = terminal;
        threads = words.get(FileOptions.THREADS, Runtime.getRuntime().availableProcessors());
        notes = Notes.of(words, sources.found().size());
    }

    /** Does the job on every file and reports. */
    ExitCode run(Job job, Report report) {
        return run(sources.found(), job, report);
    }

    /** Does the job on files in their order, the report to come later. */
    void prepare(List<Source> files, Job job) {
        int[] done = {0};
        terminal.progress(0, files.size());
        Batch.run(files, job, threads, result -> {
            done[0]++;
            terminal.progress(done[0], files.size());
        });
        terminal.endProgress();
    }

    /** Does the job on files in their order and reports. */
    ExitCode run(List<Source> files, Job job, Report report) {
        List<Result> done = new ArrayList<>();
        report.begin(terminal);
        terminal.progress(0, files.size());
        Batch.run(files, job, threads, result -> {
            terminal.endProgress();
            done.add(result);
            report.each(result, terminal);
            remark(result);
            terminal.progress(done.size(), files.size());
        });
        terminal.endProgress();
        List<Sources.Problem> remarks = new ArrayList<>(report.needsPins() ? sources.strayPins() : List.of());
        remarks.addAll(sources.problems());
        remarks.forEach(remark -> terminal.err().println(remark.diagnostic().print(remark.input())));
        notes.tellHidden(terminal);
        List<String> failed = failed(done);
        report.end(done, failed, terminal);
        if (done.stream().anyMatch(BatchRun::isBroken)) {
            return ExitCode.BROKEN;
        }
        return failed.isEmpty() ? ExitCode.ALL_DONE : ExitCode.SOME_FAILED;
    }

    private void remark(Result result) {
        for (Diagnostic diagnostic : result.diagnostics()) {
            if (notes.isShown(diagnostic)) {
                terminal.err().println(diagnostic.print(result.source().shown()));
            }
        }
    }

    private List<String> failed(List<Result> done) {
        List<String> failed = new ArrayList<>();
        done.stream()
                .filter(result -> !result.done())
                .forEach(result -> failed.add(result.source().shown()));
        sources.problems().forEach(problem -> failed.add(problem.input()));
        return failed;
    }

    private static boolean isBroken(Result result) {
        return result.diagnostics().stream().anyMatch(remark -> remark.code() == DiagnosticCode.INTERNAL);
    }
}
