package org.bellowscribe.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.bellowscribe.batch.Keeping;
import org.bellowscribe.batch.PathPattern;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.jspecify.annotations.Nullable;

/** Marks tunes, then waits, and marks again whatever is saved, until it is told to end. */
final class Watch {

    private static final int POLL_MILLISECONDS = 100;
    private static final int LAST_SECONDS = 10;
    private static final List<CommandOption<?>> OPTIONS = MarkOptions.all();

    private final Terminal terminal;
    private final Settling settling = new Settling(System::nanoTime);
    private CommandWords words;
    private MarkRun run;
    private FolderWatch folders;
    /** By the score the hash of the result that was put in its place: that it changed is no news. */
    private final Map<Path, String> own = new HashMap<>();

    private Watch(CommandWords words, Terminal terminal) throws UsageException {
        this.words = words;
        this.terminal = terminal;
        run = MarkRun.plan(words, terminal);
        folders = watch();
    }

    /**
     * Watches until the process is asked to end; what is being written then is written whole.
     *
     * @throws UsageException if the line is wrong
     */
    static ExitCode until(CommandWords words, Terminal terminal) throws UsageException {
        CountDownLatch done = new CountDownLatch(1);
        Thread watching = Thread.currentThread();
        Thread hook = new Thread(() -> {
            watching.interrupt();
            try {
                done.await(LAST_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            loop(words, terminal, watching::isInterrupted);
        } finally {
            done.countDown();
        }
        return ExitCode.ALL_DONE;
    }

    /**
     * Watches until it is told to end, or its thread is interrupted.
     *
     * @param ended asked before each look
     * @throws UsageException if the line is wrong
     */
    static void loop(CommandWords words, Terminal terminal, BooleanSupplier ended) throws UsageException {
        Watch watch = new Watch(words, terminal);
        watch.mark(watch.run);
        int scores = watch.run.sources().found().size();
        terminal.err().println("Watching %d score%s; Ctrl-C ends.".formatted(scores, scores == 1 ? "" : "s"));
        try {
            while (!ended.getAsBoolean()) {
                Thread.sleep(POLL_MILLISECONDS);
                watch.look();
            }
        } catch (InterruptedException e) {
            // This is how it ends.
            Thread.currentThread().interrupt();
        }
    }

    private void look() {
        settling.add(folders.changed());
        Set<Path> settled = settling.settled();
        settled.removeIf(this::isOwn);
        if (settled.isEmpty()) {
            return;
        }
        Set<Path> scores = scores(settled);
        if (scores != null) {
            mark(run.only(scores));
        } else {
            readAgain();
        }
    }

    private boolean isOwn(Path file) {
        String hash = own.get(file);
        return hash != null && hash.equals(Ledger.hash(file));
    }

    /** Returns the scores that the changed files are or belong to; null if one of them may concern any score. */
    private @Nullable Set<Path> scores(Set<Path> changed) {
        Map<Path, Path> known = new HashMap<>();
        for (Source source : run.sources().found()) {
            known.put(absolute(source.file()), source.file());
            Path pins = source.pinsFile();
            if (pins != null) {
                known.put(absolute(pins), source.file());
            }
        }
        Set<Path> scores = new LinkedHashSet<>();
        for (Path file : changed) {
            Path score = known.get(file);
            if (score == null || !Files.exists(score)) {
                return null;
            }
            scores.add(score);
        }
        return scores;
    }

    private void readAgain() {
        try {
            words = words.again(OPTIONS);
            run = MarkRun.plan(words, terminal);
            folders = watch();
            mark(run);
        } catch (UsageException e) {
            // A file that is being worked on may be wrong for a while.
            terminal.err().println(e.lines());
        }
    }

    private void mark(MarkRun some) {
        Keeping keeping = some.keeping();
        some.run(keeping, new WatchReport(), terminal);
        if (words.has(FileOptions.IN_PLACE)) {
            some.sources().found().forEach(source -> own.put(absolute(source.file()), Ledger.hash(source.target())));
        }
    }

    private FolderWatch watch() {
        Set<Path> recursive = new LinkedHashSet<>();
        Set<Path> single = new LinkedHashSet<>(run.plans().files());
        for (String word : words.rest()) {
            Path folder = folder(word);
            if (folder != null) {
                recursive.add(folder);
            } else if (word.startsWith("@")) {
                single.add(Path.of(word.substring(1)));
            }
        }
        for (Source source : run.sources().found()) {
            single.add(source.file());
            single.add(source.file().resolveSibling(SettingsFile.NAME));
            Path pins = source.pinsFile();
            if (pins != null) {
                single.add(pins);
            }
        }
        single.removeIf(
                file -> recursive.stream().anyMatch(folder -> absolute(file).startsWith(absolute(folder))));
        return new FolderWatch(recursive, single, words.get(FileOptions.OUT));
    }

    private static @Nullable Path folder(String word) {
        try {
            Path path = Path.of(word);
            if (Files.exists(path)) {
                return Files.isDirectory(path) ? path : null;
            }
        } catch (InvalidPathException e) {
            // Then it can only be a pattern.
        }
        return PathPattern.isOne(word) && !word.startsWith("@") ? Path.of(PathPattern.folderOf(word)) : null;
    }

    private static Path absolute(Path path) {
        return path.toAbsolutePath().normalize();
    }
}
