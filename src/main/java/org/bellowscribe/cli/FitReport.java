package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.FitJob;
import org.bellowscribe.batch.Result;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.report.FitWriter;
import org.jspecify.annotations.Nullable;

/** Ranked trials of all tunes, then of the book, in one piece at the end. */
final class FitReport implements Report {

    private final FitJob job;
    private final FitWriter writer;
    private final BookFit book;
    private final @Nullable Path out;
    private final StringBuilder text;
    private boolean written = true;

    /**
     * Creates a report.
     *
     * @param out the file to write; null for the terminal
     */
    FitReport(FitJob job, FitWriter writer, BookFit book, @Nullable Path out) {
        this.job = job;
        this.writer = writer;
        this.book = book;
        this.out = out;
        text = new StringBuilder(writer.begin());
    }

    /** Returns false if the file could not be written. */
    boolean isWritten() {
        return written;
    }

    @Override
    public void begin(Terminal terminal) {
        // The text begins with the writer.
    }

    @Override
    public void each(Result result, Terminal terminal) {
        TuneFit fit = job.take(result.source());
        if (fit != null) {
            text.append(writer.tune(fit));
            book.add(fit);
        }
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        text.append(writer.end(book));
        if (out == null) {
            terminal.out().print(text);
            return;
        }
        try {
            AtomicFile.write(out, text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(out.toString())));
            written = false;
        }
    }
}
