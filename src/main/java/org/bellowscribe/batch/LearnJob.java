package org.bellowscribe.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.learning.TaughtTune;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.TaughtReader;
import org.jspecify.annotations.Nullable;

/** Reads what somebody marked in scores; nothing is written. */
public final class LearnJob implements Job {

    private final Job safely = SafeJob.of(this::read);
    private final MarkSettings settings;
    private final TaughtReader reader;
    private final @Nullable Path pins;
    private final Map<Source, TaughtTune> tunes = new ConcurrentHashMap<>();

    /**
     * Creates the job.
     *
     * @param settings how the scores were marked
     * @param pins the file of pins of the one tune; null for those beside each score
     */
    public LearnJob(MarkSettings settings, @Nullable Path pins) {
        this.settings = settings;
        reader = new TaughtReader(settings);
        this.pins = pins;
    }

    @Override
    public Result run(Source source) {
        return safely.run(source);
    }

    private Result read(Source source, byte[] bytes) throws DiagnosedException {
        TaughtReader.Taught taught = reader.read(
                bytes, source.stem(), settings.steering().keepsPins() ? PinsBeside.read(pins, source) : null);
        if (taught.marks().isEmpty()) {
            throw new DiagnosedException(
                    Diagnostic.error(
                            DiagnosticCode.HAND_EDIT,
                            Place.FILE,
                            "Nothing is marked here that could be learned from.",
                            "Maybe put ! behind the marks that are yours, or add --keep-edits so that every mark of the sheet counts."));
        }
        tunes.put(source, new TaughtTune(source.shown(), taught.task(), taught.marks()));
        return new Result(source, true, null, taught.remarks());
    }

    /** Returns what was marked in all files, in their order. */
    public List<TaughtTune> taught(List<Result> results) {
        return results.stream()
                .filter(result -> tunes.containsKey(result.source()))
                .map(result -> tunes.get(result.source()))
                .toList();
    }
}
