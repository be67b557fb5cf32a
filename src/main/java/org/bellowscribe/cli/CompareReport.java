package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.CompareJob;
import org.bellowscribe.batch.Result;
import org.bellowscribe.compare.CompareKey;
import org.bellowscribe.compare.ComparePage;
import org.bellowscribe.compare.ComparedTune;
import org.bellowscribe.compare.Lots;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/** Writes the page when all tunes are played both ways. */
final class CompareReport implements Report {

    private static final String KEY = "key.csv";

    private final CompareJob job;
    private final Path out;
    private final @Nullable Lots lots;
    private boolean written;

    /**
     * Creates a report.
     *
     * @param out the folder
     * @param lots by which the ways were drawn; null if the page tells which is which
     */
    CompareReport(CompareJob job, Path out, @Nullable Lots lots) {
        this.job = job;
        this.out = out;
        this.lots = lots;
    }

    /** Returns true if the page was written. */
    boolean isWritten() {
        return written;
    }

    @Override
    public void begin(Terminal terminal) {
        // What is compared is told together, at the end.
    }

    @Override
    public void each(Result result, Terminal terminal) {
        // What is compared is told together, at the end.
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        List<ComparedTune> tunes = job.compared(results);
        refusals.lines("compared").forEach(terminal.out()::println);
        if (tunes.isEmpty()) {
            terminal.err().println("There is nothing to compare.");
            return;
        }
        try {
            for (Map.Entry<String, byte[]> file : ComparePage.shared().entrySet()) {
                AtomicFile.write(out.resolve(file.getKey()), file.getValue());
            }
            write(ComparePage.SCORES, ComparePage.scores(tunes));
            if (lots != null) {
                write(KEY, CompareKey.of(tunes));
            }
            write(ComparePage.NAME, ComparePage.of(tunes, lots));
            written = true;
            terminal.out()
                    .println("%s compared. Open it in a browser: %s"
                            .formatted(
                                    tunes.size() == 1 ? "1 tune" : tunes.size() + " tunes",
                                    out.resolve(ComparePage.NAME)));
            if (lots != null) {
                terminal.out().println("Which way is which stands in %s, for later.".formatted(out.resolve(KEY)));
            }
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(out.toString())));
        }
    }

    private void write(String name, String text) throws DiagnosedException {
        AtomicFile.write(out.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }
}
