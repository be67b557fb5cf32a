package org.bellowscribe.batch;

import java.util.List;
import org.bellowscribe.musicxml.ScoreDocument;

/** The jobs that can be done on a file. */
public final class Jobs {

    private Jobs() {}

    /** Returns the job that marks a tune. Our earlier marks are taken out first, so marking again changes nothing. */
    public static Job mark(MarkSettings settings) {
        return new SafeJob((source, bytes) -> new MarkJob(settings, source).run(bytes));
    }

    /** Returns the job that takes our marks out again. */
    public static Job strip() {
        return new SafeJob((source, bytes) -> {
            source.write(ScoreDocument.decode(bytes).withoutMarks().encode());
            return new Result(source, true, null, List.of());
        });
    }
}
