package org.bellowscribe.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.bellowscribe.batch.FitJob;
import org.bellowscribe.batch.Result;
import org.bellowscribe.fit.BookFit;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.report.FitValues;

/** What the lines of {@code fit} have beside those of all commands: the trials, and at the end the book. */
final class FitLines implements JsonReport.Extra {

    private final FitJob job;
    private final BookFit book;
    private final int best;

    /**
     * Creates them.
     *
     * @param best how many trials of a tune to tell; 0 for all
     */
    FitLines(FitJob job, BookFit book, int best) {
        this.job = job;
        this.book = book;
        this.best = best;
    }

    @Override
    public void tune(JsonGenerator json, Result result) throws IOException {
        TuneFit fit = job.take(result.source());
        if (fit != null) {
            book.add(fit);
            json.writeStringField("key", fit.tune().measures().get(0).key().name());
            FitValues.trials(json, fit, best);
        }
    }

    @Override
    public void end(JsonGenerator json) throws IOException {
        FitValues.book(json, book);
    }
}
