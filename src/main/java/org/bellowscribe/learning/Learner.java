package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Task;

/** Learns points from marked tunes, and tries on tunes left out what that is worth. */
public final class Learner {

    private static final int MOST_PARTS = 4;

    private final Manner base;
    private final List<TaughtTune> tunes = new ArrayList<>();
    private final List<String> impossible = new ArrayList<>();

    private Learner(Manner base) {
        this.base = base;
    }

    /**
     * Learns.
     *
     * @param given the marked tunes, each of which can be played; at least one with a mark
     * @param base the manner to start from
     */
    public static Learned learn(List<TaughtTune> given, Manner base) {
        return learn(given, base, MOST_PARTS);
    }

    /**
     * Learns, and tries on tunes left out in so many parts.
     *
     * @param given the marked tunes, each of which can be played; at least one with a mark
     * @param base the manner to start from
     * @param parts the most parts of the tunes, each left out once; less than 2 for none
     */
    static Learned learn(List<TaughtTune> given, Manner base, int parts) {
        Learner learner = new Learner(base);
        for (Keeping kept : given.stream().parallel().map(Keeping::of).toList()) {
            learner.tunes.add(kept.tune());
            learner.impossible.addAll(kept.leftOut());
        }
        return learner.learn(Math.min(parts, given.size()));
    }

    private Learned learn(int parts) {
        Table table = new Table(base, HeldRules.of(tunes));
        Planes planes = new Planes(table, tunes.size());
        Descent descent = new Descent(table, tunes, planes);
        descent.start();
        int[] points = descent.points();
        Findings findings = new Findings(table, planes, points, tunes);
        Agreement before = agreement(tunes, base);
        Learned.Change seen = new Learned.Change(before, agreement(tunes, table.manner(points)));
        Agreement leftOut = parts < 2 ? Agreement.NOTHING : leftOut(table, planes, parts);
        return new Learned(
                table.manner(points),
                findings.moves(),
                findings.unmet(),
                impossible,
                seen,
                new Learned.Change(parts < 2 ? Agreement.NOTHING : before, leftOut),
                parts < 2 ? 0 : parts);
    }

    // What is known of the other tunes is used further; that a rival was found with all tunes in view makes it no less
    // true.
    private Agreement leftOut(Table table, Planes planes, int parts) {
        Agreement sum = Agreement.NOTHING;
        for (int part = 0; part < parts; part++) {
            int out = part;
            List<Integer> kept = IntStream.range(0, tunes.size())
                    .filter(i -> i % parts != out)
                    .boxed()
                    .toList();
            Descent descent = new Descent(table, kept.stream().map(tunes::get).toList(), planes.of(kept));
            descent.goOn();
            List<TaughtTune> others = IntStream.range(0, tunes.size())
                    .filter(i -> i % parts == out)
                    .mapToObj(tunes::get)
                    .toList();
            sum = sum.plus(agreement(others, table.manner(descent.points())));
        }
        return sum;
    }

    /** Returns how far the marks of a manner agree with what was marked. */
    static Agreement agreement(List<TaughtTune> tunes, Manner manner) {
        return tunes.stream().parallel().map(tune -> agreement(tune, manner)).toList().stream()
                .reduce(Agreement.NOTHING, Agreement::plus);
    }

    private static Agreement agreement(TaughtTune tune, Manner manner) {
        Task task = tune.task();
        Solution solution = Solver.attempt(task.with(task.options().with(manner)));
        return solution == null ? Agreement.NOTHING : Agreement.of(tune.marks(), solution);
    }
}
