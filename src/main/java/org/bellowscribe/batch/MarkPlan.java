package org.bellowscribe.batch;

import org.bellowscribe.marking.MarkSettings;
import org.jspecify.annotations.Nullable;

/** How tunes are marked: those for which the same options hold have one plan. */
public final class MarkPlan {

    private final MarkSettings settings;
    private final Outputs outputs;
    private final Wanted.Beside beside;
    private final Fingerprint fingerprint;
    private final boolean keepsPins;
    private final MarkJob job;

    /**
     * What a plan is known by again.
     *
     * @param settings the options and their values as one text
     * @param definitions the hash of the files that they name
     * @param tool the hash of the tool
     */
    public record Fingerprint(String settings, String definitions, String tool) {}

    /**
     * Creates a plan.
     *
     * @param settings how to decide and what to print
     * @param outputs what to write
     * @param beside what may be written beside each result
     */
    public MarkPlan(MarkSettings settings, Outputs outputs, Wanted.Beside beside, Fingerprint fingerprint) {
        this.settings = settings;
        this.outputs = outputs;
        this.beside = beside;
        this.fingerprint = fingerprint;
        job = new MarkJob(settings, outputs);
        keepsPins = settings.steering().keepsPins();
    }

    /** Returns what may be written beside each result. */
    public Wanted.Beside beside() {
        return beside;
    }

    /** Returns how to decide and what to print. */
    public MarkSettings settings() {
        return settings;
    }

    /** Returns what to write. */
    public Outputs outputs() {
        return outputs;
    }

    /** Returns the same plan with pages to look at; none if null. */
    public MarkPlan with(@Nullable ReportFolder pages) {
        return pages == null ? this : new MarkPlan(settings, outputs.with(pages), beside, fingerprint);
    }

    Fingerprint fingerprint() {
        return fingerprint;
    }

    boolean keepsPins() {
        return keepsPins;
    }

    Result run(Source source, byte[] bytes) {
        return job.run(source, bytes);
    }
}
