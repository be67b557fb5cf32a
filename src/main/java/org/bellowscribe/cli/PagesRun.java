package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.bellowscribe.batch.ReportFolder;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.page.IndexPart;
import org.jspecify.annotations.Nullable;

/** A run that also writes a report: what the pages share goes before it, their index behind it. */
final class PagesRun {

    private final @Nullable ReportFolder folder;
    private final String name;
    private final Terminal terminal;

    /**
     * Creates one.
     *
     * @param folder the folder of the report; null if there is none
     * @param name what to name it after
     * @param terminal where to tell
     */
    PagesRun(@Nullable ReportFolder folder, String name, Terminal terminal) {
        this.folder = folder;
        this.name = name;
        this.terminal = terminal;
    }

    /**
     * Runs.
     *
     * @param lines what is printed of the files
     * @param run does the work and prints so
     */
    ExitCode run(Report lines, Function<Report, ExitCode> run) {
        if (folder == null) {
            return run.apply(lines);
        }
        try {
            ReportFolder.begin(folder.folder());
            Kept kept = new Kept(lines, new ArrayList<>());
            ExitCode code = run.apply(kept);
            terminal.out().println("Open the report in a browser: " + index(kept));
            return code;
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print("--report")));
            return ExitCode.SOME_FAILED;
        }
    }

    private Path index(Kept kept) throws DiagnosedException {
        List<IndexPart> parts =
                List.of(new IndexPart(name, Objects.requireNonNull(folder).lines(kept.results())));
        return ReportFolder.finish(folder.folder(), "Marked tunes", parts);
    }

    /** Keeps the results for the index. */
    private record Kept(Report lines, List<Result> results) implements Report {

        @Override
        public boolean needsPins() {
            return lines.needsPins();
        }

        @Override
        public boolean holdsRemarks() {
            return lines.holdsRemarks();
        }

        @Override
        public void problem(Sources.Problem problem, Terminal to) {
            lines.problem(problem, to);
        }

        @Override
        public void begin(Terminal to) {
            lines.begin(to);
        }

        @Override
        public void each(Result result, Terminal to) {
            lines.each(result, to);
        }

        @Override
        public void end(List<Result> all, Refusals refusals, Terminal to) {
            results.addAll(all);
            lines.end(all, refusals, to);
        }
    }
}
