package org.bellowscribe.batch;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.marking.Decision;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.MarkedTune;
import org.bellowscribe.marking.SheetLines;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.jspecify.annotations.Nullable;

/**
 * The work on an edition of a book, in two rounds: first all tunes are decided, each once and in its own way, then those
 * that can be played are printed, when what is printed may depend on the others.
 */
public final class EditionJobs {

    private final Function<Source, Plan> plans;
    private final Map<Source, Decision.Decided> decided = new ConcurrentHashMap<>();
    private final Map<Source, Result> refused = new ConcurrentHashMap<>();
    private final Map<Source, List<String>> beside = new ConcurrentHashMap<>();
    private volatile @Nullable ReportFolder pages;

    /**
     * How to mark one tune.
     *
     * @param settings what to decide and print
     * @param outputs what to write
     */
    public record Plan(MarkSettings settings, Outputs outputs) {}

    /**
     * Creates the work.
     *
     * @param plans how to mark each tune; asked by many threads
     */
    public EditionJobs(Function<Source, Plan> plans) {
        this.plans = plans;
        ScoreReader.warm();
    }

    /** Returns the first round: nothing is written but, where wanted, a record of what was refused. */
    public Job deciding() {
        Job job = SafeJob.of((source, bytes) -> job(source).decide(source, bytes, tune -> {
            decided.put(source, tune);
            return new Result(source, true, null, tune.remarks());
        }));
        return source -> {
            Result result = job.run(source);
            if (!result.done()) {
                refused.put(source, result);
            }
            return result;
        };
    }

    /** Returns what was decided about a tune; null if it was refused or has not had its turn. */
    public Decision.@Nullable Decided decided(Source source) {
        return decided.get(source);
    }

    /**
     * Returns the second round; a tune that was refused is told, and nothing is written.
     *
     * @param lines words to print below the beginning of each sheet
     */
    public Job printing(Function<Source, SheetLines> lines) {
        Job printing = SafeJob.later(source -> print(source, lines.apply(source)));
        return source -> refused.containsKey(source) ? refused.get(source) : printing.run(source);
    }

    private Result print(Source source, SheetLines lines) throws DiagnosedException {
        Decision.Decided tune = decided.get(source);
        if (tune == null) {
            throw new IllegalStateException("The tune (%s) must be decided first.".formatted(source.shown()));
        }
        MarkJob job = job(source);
        MarkedTune marked = job.mark(tune, lines);
        Result result = job.write(source, marked);
        beside.put(source, besides(source, marked));
        return result;
    }

    private static List<String> besides(Source source, MarkedTune marked) {
        return marked.beside().stream()
                .map(sheet -> String.valueOf(source.beside(sheet.ending()).getFileName()))
                .toList();
    }

    /** Returns the names of the further sheets of a tune that were written beside it. */
    public List<String> sheetsBeside(Source source) {
        return beside.getOrDefault(source, List.of());
    }

    /** Has pages to look at written in the second round. */
    public void show(ReportFolder folder) {
        pages = folder;
    }

    private MarkJob job(Source source) {
        Plan plan = plans.apply(source);
        return new MarkJob(plan.settings(), plan.outputs().with(pages));
    }
}
