package org.bellowscribe.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.fit.FitOptions;
import org.bellowscribe.fit.Fitting;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.fit.TuneFit;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.jspecify.annotations.Nullable;

/** Tries tunes on instruments and in keys; nothing is written. */
public final class FitJob implements Job {

    private final Job safely = SafeJob.of(this::fit);
    private final List<Instrument> instruments;
    private final FitOptions options;
    private final ReadingOptions reading;
    private final Map<Source, TuneFit> fits = new ConcurrentHashMap<>();
    private final Map<Source, String> books = new ConcurrentHashMap<>();

    /**
     * Creates the job.
     *
     * @param reading which line of a score is the melody
     */
    public FitJob(List<Instrument> instruments, FitOptions options, ReadingOptions reading) {
        this.instruments = List.copyOf(instruments);
        this.options = options;
        this.reading = reading;
        ScoreReader.warm();
    }

    @Override
    public Result run(Source source) {
        return safely.run(source);
    }

    private Result fit(Source source, byte[] bytes) throws DiagnosedException {
        ScoreDocument document = ScoreDocument.decode(bytes).withoutMarks();
        books.put(source, document.bookTitle());
        Tune tune = ScoreReader.read(document.text(), source.stem(), reading);
        List<Trial> trials = Fitting.rank(tune, instruments, options);
        fits.put(source, new TuneFit(source.shown(), tune, trials));
        return new Result(source, true, null, new ArrayList<>(tune.diagnostics())).titled(tune.title());
    }

    /** Returns the title of the book that a score says it is taken from; empty if it does not say or was not read. */
    public String bookTitle(Source source) {
        return books.getOrDefault(source, "");
    }

    /** Hands over what came of a file, once; null if nothing did. */
    public @Nullable TuneFit take(Source source) {
        return fits.remove(source);
    }
}
