package org.bellowscribe.batch;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/** Runs the work on one file so that nothing it does can stop the others. */
final class SafeJob implements Job {

    /** The work itself. */
    @FunctionalInterface
    interface Work {
        Result run(Source source, byte[] bytes) throws DiagnosedException;
    }

    /** Work that needs no bytes: they were read before. */
    @FunctionalInterface
    interface LaterWork {
        Result run(Source source) throws DiagnosedException;
    }

    private final LaterWork work;

    private SafeJob(LaterWork work) {
        this.work = work;
    }

    /** Returns the job of work on the bytes of a file. */
    static SafeJob of(Work work) {
        return new SafeJob(source -> work.run(source, source.read()));
    }

    /** Returns the job of work that needs no bytes. */
    static SafeJob later(LaterWork work) {
        return new SafeJob(work);
    }

    @Override
    public Result run(Source source) {
        Result result = attempt(source);
        return !result.done() && source.hasOlderResult() ? result.with(olderResult(source)) : result;
    }

    private static Diagnostic olderResult(Source source) {
        return Diagnostic.warning(
                DiagnosticCode.OLDER_RESULT,
                Place.FILE,
                "Nothing was written this time; %s is older and stays.".formatted(source.target()),
                "Maybe remove it, so that nobody plays from it.");
    }

    private Result attempt(Source source) {
        try {
            return work.run(source);
        } catch (DiagnosedException e) {
            return Result.failed(source, e.diagnostics());
        } catch (OutOfMemoryError e) {
            return Result.failed(
                    source,
                    List.of(Diagnostic.error(
                            DiagnosticCode.UNREADABLE,
                            Place.FILE,
                            "The file needs more memory than Java has (%d MB)."
                                    .formatted(Runtime.getRuntime().maxMemory() >> 20),
                            "Maybe give it more, with -Xmx2g behind the word java, or fewer --threads.")));
        } catch (RuntimeException | StackOverflowError e) {
            // The one place that catches what should not happen: one bad tune never stops a batch.
            StackTraceElement[] trace = e.getStackTrace();
            String where = trace.length == 0 ? "" : " at " + trace[0];
            return Result.failed(
                    source,
                    List.of(Diagnostic.error(
                            DiagnosticCode.INTERNAL,
                            Place.FILE,
                            "The tool broke on this file (%s%s).".formatted(e, where),
                            "Please report this with the file.")));
        }
    }
}
