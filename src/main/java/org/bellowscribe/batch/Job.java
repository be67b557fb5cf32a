package org.bellowscribe.batch;

/** The work on one file. Must not throw for anything that is in the file. */
@FunctionalInterface
public interface Job {

    /** Does the work, writes the result, and says what became of it. */
    Result run(Source source);
}
