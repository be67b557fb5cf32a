package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * How the time to decide a tune grows with its length, with and without repeats, on usual and on tight bellows. Runs with
 * {@code -Dmeasure=solver-benchmark} only, on a quiet machine. Synthetic tunes of seven notes a measure, three of each kind,
 * in milliseconds a tune, left hand and equal measures included:
 *
 * <pre>
 * | measures | 40 RU·s, repeats | 40 RU·s, straight on | 20 RU·s, repeats | 20 RU·s, straight on |
 * |---|---|---|---|---|
 * | 8 | 1.9 | 1.5 | 3.4 | 2.6 |
 * | 16 | 5.9 | 6.9 | 19 | 6.2 |
 * | 32 | 26 | 13 | 98 | 43 |
 * | 64 | 50 | 23 | 656 | 239 |
 * | 128 | 342 | 245 | 2,047 | 1,035 |
 * | 256 | 1,536 | 1,473 | 2,774 | 3,124 |
 * </pre>
 *
 * At 256 measures one tune in three at 40 RU·s, and at 20 RU·s those of 128 and more, use up their work and end within 5 % of
 * their bound.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class SolverBenchmark {

    /** Tunes a round, so that no single one decides. */
    static final int TUNES = 3;

    @Param({"8", "16", "32", "64", "128", "256"})
    int measures;

    @Param({"true", "false"})
    boolean repeats;

    /** In RU.s. */
    @Param({"40", "20"})
    int capacity;

    private final Manner manner = MannerLibrary.of(MannerLibrary.DEFAULT_ID);
    private Instrument box;
    private final List<Tune> tunes = new ArrayList<>();

    /** Makes the tunes. */
    @Setup
    public void setUp() throws DiagnosedException {
        Instrument usual = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);
        Bellows bellows = usual.bellows();
        box = new Instrument(
                usual.id(),
                usual.name(),
                usual.buttons(),
                usual.leftHand(),
                new Bellows(capacity, bellows.reserve(), bellows.lightAirFlow(), bellows.fullAirFlow()),
                usual.air());
        for (int seed = 1; seed <= TUNES; seed++) {
            tunes.add(SyntheticTune.of(measures, repeats, seed));
        }
    }

    /** Plans the left hand and solves. */
    @Benchmark
    @OperationsPerInvocation(TUNES)
    public void solve(Blackhole blackhole) {
        tunes.forEach(tune -> blackhole.consume(outcome(tune)));
    }

    /** Returns how many of the tunes are proved. */
    int proved() {
        int proved = 0;
        for (Tune tune : tunes) {
            proved += outcome(tune) instanceof Outcome.Solved solved
                            && solved.solution().cost().isProved()
                    ? 1
                    : 0;
        }
        return proved;
    }

    private Outcome outcome(Tune tune) {
        SolverOptions options = new SolverOptions(manner, Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
        return Solver.solve(tune, box, UsualPlan.of(tune, box), options);
    }
}
