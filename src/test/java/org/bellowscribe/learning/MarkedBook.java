package org.bellowscribe.learning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.Shared;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.jspecify.annotations.Nullable;

/** Tunes of score files as tasks on the usual box, and what a manner marks in them. */
final class MarkedBook {

    static final Manner USUAL = MannerLibrary.of(MannerLibrary.DEFAULT_ID);

    private static final long CELL_LIMIT = 60_000;

    // Learning decides each tune many times, and these take little.
    private static final List<String> SHORT = List.of("the-leaning-gate", "two-ducks", "the-ferry-bell");

    private MarkedBook() {}

    /** Returns up to three short samples, of two and of three beats, with the marks of a manner. */
    static List<TaughtTune> samples(Manner manner, int most) {
        return marked(
                SHORT.stream()
                        .map(name -> Path.of("samples", "book", name + ".musicxml"))
                        .toList(),
                manner,
                most);
    }

    /** Returns shared tunes that can be played as they are written: each so many-th, from one on. */
    static List<Path> shared(int first, int step) {
        List<Path> all = Shared.scores("corpus/tunes");
        List<Path> some = new ArrayList<>();
        for (int i = first; i < all.size(); i += step) {
            some.add(all.get(i));
        }
        return some;
    }

    /** Returns the first tunes that can be played, with all marks of a manner. */
    static List<TaughtTune> marked(List<Path> files, Manner manner, int most) {
        List<TaughtTune> tunes = new ArrayList<>();
        for (Path file : files) {
            Task task = tunes.size() < most ? task(file) : null;
            if (task != null && Solver.solve(task.with(task.options().with(manner))) instanceof Outcome.Solved solved) {
                tunes.add(new TaughtTune(name(file), task, WholeSheet.of(solved.solution())));
            }
        }
        return tunes;
    }

    /** Returns a file's tune on the usual box; null if it has none. */
    static @Nullable Task task(Path file) {
        try {
            Instrument box = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);
            String text = ScoreDocument.decode(Files.readAllBytes(file)).text();
            Tune tune = ScoreReader.read(text, name(file), ReadingOptions.DEFAULT);
            SolverOptions options = new SolverOptions(USUAL, Times.AGAIN, true, CELL_LIMIT);
            return new Task(tune, box, UsualPlan.of(tune, box), options, 0);
        } catch (DiagnosedException | IOException e) {
            return null;
        }
    }

    /** Returns the marks of a task, which can be played. */
    static Solution solved(Task task) {
        return ((Outcome.Solved) Solver.solve(task)).solution();
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
