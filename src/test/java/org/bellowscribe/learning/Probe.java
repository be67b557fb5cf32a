package org.bellowscribe.learning;

import java.nio.file.*;
import java.util.*;
import java.util.stream.*;
import org.bellowscribe.accompaniment.*;
import org.bellowscribe.instrument.*;
import org.bellowscribe.instrument.file.*;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.*;
import org.bellowscribe.score.*;
import org.bellowscribe.solver.*;
import org.bellowscribe.solver.manner.MannerLibrary;

class Probe {
    static final Instrument BOX;
    static { try { BOX = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);} catch (Exception e) { throw new RuntimeException(e);} }

    static Task task(Path file, Manner m) {
        try {
            String text = ScoreDocument.decode(Files.readAllBytes(file)).text();
            Tune written = ScoreReader.read(text, file.getFileName().toString(), ReadingOptions.DEFAULT);
            List<WantedSound> wanted = Accompaniment.plan(written, BOX);
            SolverOptions o = new SolverOptions(m, Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
            Task t = new Task(written, BOX, wanted, o, 0);
            Task b = Marking.bounded(t);
            return Solver.hasChoices(b) && Solver.solve(b) instanceof Outcome.Solved ? t : null;
        } catch (Exception e) { return null; }
    }

    static List<Task> tasks(int step, int offset, int n) throws Exception {
        List<Path> files; try (Stream<Path> s = Files.walk(Path.of("../shared/corpus/tunes"))) { files = s.filter(f -> f.toString().matches(".*\\.(musicxml|xml|mxl)")).sorted().toList(); }
        List<Task> out = new ArrayList<>();
        Manner m = MannerLibrary.of("along-the-row");
        for (int i = offset; i < files.size() && out.size() < n; i += step) { Task t = task(files.get(i), m); if (t != null) out.add(t); }
        return out;
    }

    static MarkedTune marked(Task t, Manner m, String name) {
        Solution s = Solver.attempt(t.with(t.options().with(m)));
        return s == null ? null : new MarkedTune(name, t, WholeSheet.of(s));
    }

    static Agreement agree(List<MarkedTune> tunes, Manner m) {
        return tunes.parallelStream().map(x -> Agreement.of(x.marks(), Solver.attempt(x.task().with(x.task().options().with(m))))).reduce(Agreement.NOTHING, Agreement::plus);
    }
    static String show(Agreement a) { return String.format("buttons %.1f dir %.1f fing %.1f left %.1f air %.1f", a.buttons().percent(), a.directions().percent(), a.fingers().percent(), a.leftHand().percent(), a.air().percent()); }

    public static void main(String[] a) throws Exception {
        int n = Integer.parseInt(a[1]);
        Manner base = MannerLibrary.of("along-the-row");
        for (String id : a[0].split(",")) {
            Manner goal = MannerLibrary.of(id);
            long t0 = System.nanoTime();
            List<MarkedTune> train = tasks(3, 0, n).parallelStream().map(t -> marked(t, goal, "x")).filter(Objects::nonNull).toList();
            List<MarkedTune> test = tasks(3, 1, 20).parallelStream().map(t -> marked(t, goal, "x")).filter(Objects::nonNull).toList();
            System.err.printf("%s: read and marked %d %d in %.1f s%n", id, train.size(), test.size(), (System.nanoTime() - t0) / 1e9);
            System.err.println("before: " + show(agree(test, base)));
            t0 = System.nanoTime();
            Table table = new Table(base, Set.of());
            Descent.Ground g = Descent.run(table, train);
            System.err.printf("learned in %.1f s%n", (System.nanoTime() - t0) / 1e9);
            Manner m = table.manner(g.points());
            System.err.println("train: " + show(agree(train, m)));
            System.err.println("after: " + show(agree(test, m)));
            StringBuilder b = new StringBuilder();
            int[] gp = new Table(goal, Set.of()).points();
            for (int i = 0; i < table.size(); i++) if (gp[i] != table.points()[i] || g.points()[i] != table.points()[i]) b.append(table.at(i)).append(' ').append(table.points()[i]).append("->").append(g.points()[i]).append(" (").append(gp[i]).append("), ");
            System.err.println(b);
        }
    }
}
