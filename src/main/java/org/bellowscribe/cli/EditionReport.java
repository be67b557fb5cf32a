package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.edition.Edition;
import org.bellowscribe.edition.FrontHtml;
import org.bellowscribe.edition.FrontPage;
import org.bellowscribe.edition.FrontText;
import org.bellowscribe.edition.IndexCsv;
import org.bellowscribe.edition.IndexHtml;
import org.bellowscribe.edition.IndexText;

/** Reports the tunes of an edition, and writes what stands around them once all of them are written. */
final class EditionReport implements Report {

    private final EditionRun run;
    private final Path folder;
    private final Report tunes;
    private final List<Result> results = new ArrayList<>();
    private final boolean silent;
    private boolean written;

    /**
     * Creates a report.
     *
     * @param folder the folder of the edition
     * @param tunes the report on single tunes; if it holds all remarks, nothing is printed beside it
     */
    EditionReport(EditionRun run, Path folder, Report tunes) {
        this.run = run;
        this.folder = folder;
        this.tunes = tunes;
        this.silent = tunes.holdsRemarks();
    }

    /** Returns what became of the tunes, in the order of the edition. */
    List<Result> results() {
        return results;
    }

    /** Tells whether index and front page were written. */
    boolean isWritten() {
        return written;
    }

    @Override
    public boolean holdsRemarks() {
        return silent;
    }

    @Override
    public void problem(Sources.Problem problem, Terminal terminal) {
        tunes.problem(problem, terminal);
    }

    @Override
    public void begin(Terminal terminal) {
        tunes.begin(terminal);
    }

    @Override
    public void each(Result result, Terminal terminal) {
        tunes.each(result, terminal);
    }

    @Override
    public void end(List<Result> all, Refusals refusals, Terminal terminal) {
        results.addAll(all);
        if (silent) {
            write(run.edition(all), terminal.quiet());
            tunes.end(all, refusals, terminal);
        } else {
            tunes.end(all, refusals, terminal);
            write(run.edition(all), terminal);
        }
    }

    private void write(Edition edition, Terminal terminal) {
        if (edition.tunes().isEmpty()) {
            terminal.out().println("No edition was written: it would be empty.");
            return;
        }
        terminal.out().println(edition.order());
        try {
            for (Map.Entry<String, String> file : files(edition).entrySet()) {
                AtomicFile.write(folder.resolve(file.getKey()), file.getValue().getBytes(StandardCharsets.UTF_8));
            }
            written = true;
            terminal.out()
                    .println("Front page: %s, index: %s"
                            .formatted(
                                    folder.resolve(EditionNames.FRONT + ".html"),
                                    folder.resolve(EditionNames.INDEX + ".html")));
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(folder.toString())));
        }
    }

    private static Map<String, String> files(Edition edition) throws DiagnosedException {
        FrontPage front = new FrontPage(edition);
        Map<String, String> files = new LinkedHashMap<>();
        files.put(EditionNames.FRONT + ".html", FrontHtml.of(front));
        files.put(EditionNames.FRONT + ".txt", FrontText.of(front));
        files.put(EditionNames.BUTTONS + ".svg", front.svg());
        files.put(EditionNames.INDEX + ".csv", IndexCsv.of(edition));
        files.put(EditionNames.INDEX + ".txt", IndexText.of(edition));
        files.put(EditionNames.INDEX + ".html", IndexHtml.of(edition));
        return files;
    }
}
