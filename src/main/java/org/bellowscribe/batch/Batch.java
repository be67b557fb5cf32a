package org.bellowscribe.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** Runs one job on many files with some threads; results come in the order of the files. */
public final class Batch {

    private Batch() {}

    /**
     * Runs a job on every file.
     *
     * @param sources the files
     * @param job the job
     * @param threads how many work at a time, 1 or more
     * @param each told every result, in the order of the files, as soon as those before it are told
     */
    public static void run(List<Source> sources, Job job, int threads, Consumer<Result> each) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<Result>> results = new ArrayList<>();
            sources.forEach(source -> results.add(pool.submit(() -> job.run(source))));
            for (Future<Result> result : results) {
                each.accept(result.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
