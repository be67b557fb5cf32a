package org.bellowscribe.batch;

import java.util.function.Function;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.musicxml.read.ScoreReader;

/** The jobs that can be done on a file. */
public final class Jobs {

    /** What is told of a score that had no marks to take out. */
    public static final String NO_MARKS = "no marks found";

    private Jobs() {}

    /** Returns the job that marks a tune. Our earlier marks are taken out first, so marking again changes nothing. */
    public static Job mark(MarkSettings settings, Outputs outputs) {
        warm();
        MarkJob job = new MarkJob(settings, outputs);
        return SafeJob.of(job::run);
    }

    /**
     * Returns the job that marks tunes, each as it is planned, if their results are not as they would be.
     *
     * @param plans how each source is marked
     * @param keeping what to do with results that stand already
     */
    public static Job mark(Function<Source, MarkPlan> plans, Keeping keeping) {
        return SafeJob.of(new KeptWork(plans, keeping, Jobs::warm));
    }

    // What all tunes share takes most of a second each to build; the schema meanwhile, by another thread.
    private static void warm() {
        Thread schema = new Thread(SchemaCheck::warm, "schema");
        schema.setDaemon(true);
        schema.start();
        ScoreReader.warm();
    }

    /** Returns the job that takes our marks out again and tells how many. */
    public static Job strip() {
        return SafeJob.of(new StripJob());
    }
}
