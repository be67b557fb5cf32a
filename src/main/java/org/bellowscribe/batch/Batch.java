package org.bellowscribe.batch;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** Runs one job on many files with some threads; results come in the order of the files. */
public final class Batch {

    private static final int AHEAD = 8;

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
        Deque<Future<Result>> ahead = new ArrayDeque<>();
        try {
            for (Source source : sources) {
                // Results that wait for their turn are held in memory, so no thread runs far ahead.
                if (ahead.size() >= AHEAD * threads) {
                    each.accept(ahead.remove().get());
                }
                ahead.add(pool.submit(() -> job.run(source)));
            }
            while (!ahead.isEmpty()) {
                each.accept(ahead.remove().get());
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
