package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.Result;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.edition.Edition;
import org.bellowscribe.edition.FrontHtml;
import org.bellowscribe.edition.FrontPage;
import org.bellowscribe.edition.FrontText;
import org.bellowscribe.edition.IndexCsv;
import org.bellowscribe.edition.IndexHtml;
import org.bellowscribe.edition.IndexText;

/** Reports the tunes of an edition, and writes what stands around them once all of them are written. */
final class EditionReport implements Report {

    /** Names of what is written beside the sheets. */
    static final List<String> FILES =
            List.of("front-page.html", "front-page.txt", "buttons.svg", "index.html", "index.csv", "index.txt");

    private final EditionRun run;
    private final Path folder;
    private final Report tunes;
    private boolean written;

    /**
     * Creates a report.
     *
     * @param folder the folder of the edition
     * @param tunes the report on single tunes
     */
    EditionReport(EditionRun run, Path folder, Report tunes) {
        this.run = run;
        this.folder = folder;
        this.tunes = tunes;
    }

    /** Tells whether index and front page were written. */
    boolean isWritten() {
        return written;
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
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        tunes.end(results, refusals, terminal);
        Edition edition = run.edition(results.stream()
                .filter(result -> !result.done())
                .map(EditionReport::refused)
                .toList());
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
                            .formatted(folder.resolve("front-page.html"), folder.resolve("index.html")));
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(folder.toString())));
        }
    }

    private static Map<String, String> files(Edition edition) throws DiagnosedException {
        FrontPage front = new FrontPage(edition);
        Map<String, String> files = new LinkedHashMap<>();
        files.put("front-page.html", FrontHtml.of(front));
        files.put("front-page.txt", FrontText.of(front));
        files.put("buttons.svg", front.svg());
        files.put("index.csv", IndexCsv.of(edition));
        files.put("index.txt", IndexText.of(edition));
        files.put("index.html", IndexHtml.of(edition));
        return files;
    }

    private static Edition.Refused refused(Result result) {
        Diagnostic error = result.firstError();
        String file = result.source().name();
        return new Edition.Refused(
                result.title().isEmpty() ? file : result.title(), file, error == null ? "" : error.text());
    }
}
