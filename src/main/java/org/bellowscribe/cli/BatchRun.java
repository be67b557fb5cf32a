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
    private final List<Sources.Problem> others = new ArrayList<>();

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

    /** Adds remarks to tell at the end that are about no score. */
    BatchRun telling(List<Sources.Problem> remarks) {
        others.addAll(remarks);
        return this;
    }

    /** Does the job on every file and reports. */
    ExitCode run(Job job, Report report) {
        return run(sources.found(), job, report);
    }

    /** Does the job on files in their order, the report to come later. */
    void prepare(List<Source> files, Job job) {
        Progress progress = new Progress(terminal, files, System::nanoTime);
        progress.show();
        Batch.run(files, job, threads, result -> {
            progress.hide();
            progress.count();
            progress.show();
        });
        progress.hide();
    }

    /** Does the job on files in their order and reports. */
    ExitCode run(List<Source> files, Job job, Report report) {
        List<Result> done = new ArrayList<>();
        report.begin(terminal);
        Progress progress = new Progress(terminal, files, System::nanoTime);
        progress.show();
        Batch.run(files, job, threads, result -> {
            progress.hide();
            done.add(result);
            report.each(result, terminal);
            if (!report.holdsRemarks()) {
                remark(result);
            }
            progress.count();
            progress.show();
        });
        List<Sources.Problem> remarks = new ArrayList<>(report.needsPins() ? sources.strayPins() : List.of());
        remarks.addAll(sources.problems());
        remarks.addAll(others);
        remarks.forEach(remark -> report.problem(remark, terminal));
        notes.tellHidden(terminal);
        Refusals refusals = Refusals.of(done, sources.problems());
        report.end(done, refusals, terminal);
        return code(done, refusals);
    }

    private static ExitCode code(List<Result> done, Refusals refusals) {
        if (done.stream().anyMatch(BatchRun::isBroken)) {
            return ExitCode.BROKEN;
        }
        boolean outOfDate = Report.count(done, Result.Outcome.OUT_OF_DATE) > 0;
        return refusals.count() > 0 || outOfDate ? ExitCode.SOME_FAILED : ExitCode.ALL_DONE;
    }

    private void remark(Result result) {
        for (Diagnostic diagnostic : result.diagnostics()) {
            if (notes.isShown(diagnostic, result.outcome() != Result.Outcome.UNCHANGED)) {
                terminal.remark(result.source().shown(), diagnostic);
            }
        }
    }

    private static boolean isBroken(Result result) {
        return result.diagnostics().stream().anyMatch(remark -> remark.code() == DiagnosticCode.INTERNAL);
    }
}
